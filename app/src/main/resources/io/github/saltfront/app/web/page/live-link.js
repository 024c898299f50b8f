// Leads from a plan to its live page: the address of the plan goes along.
document.getElementById("live-link").addEventListener("click", event => { event.currentTarget.href = "/live.html" + location.hash; });
