// Makes elements, where text is always set as text, never as markup; and asks the server.
import { language, say } from "./say.js";

export function h(tag, attributes = {}, ...children) {
  return build(document.createElement(tag), attributes, children);
}

export function s(tag, attributes = {}, ...children) {
  return build(document.createElementNS("http://www.w3.org/2000/svg", tag), attributes, children);
}

function build(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === null || value === false) continue;
    if (name.startsWith("on")) element.addEventListener(name.slice(2), value);
    else if (name === "value" || name === "checked" || name === "selected" || name === "htmlFor") element[name] = value;
    else element.setAttribute(name, value === true ? "" : value);
  }
  element.append(...children.flat(9).filter(child => child !== null && child !== undefined && child !== false));
  return element;
}

/** Asks the server for its words in the language of the page. */
export const send = (path, options = {}) => fetch(path, { ...options, headers: { "Accept-Language": language, ...options.headers } });

export async function ask(method, path, body) {
  let answer;
  try {
    answer = await send(path, {
      method,
      headers: body === undefined ? {} : { "Content-Type": "application/json" },
      body: body === undefined ? undefined : JSON.stringify(body),
    });
  } catch {
    throw new Trouble([{ field: "", message: say("common.no-answer") }]);
  }
  const content = answer.status === 204 ? {} : await answer.json().catch(() => ({}));
  // the first page may come from the worker, which does not ask for the code
  if (answer.status === 401) location.assign("/enter");
  if (!answer.ok) {
    throw new Trouble(content.problems ?? [{ field: "", message: say("common.answered-with", { status: String(answer.status) }) }], answer.status);
  }
  return content;
}

export class Trouble extends Error {
  constructor(problems, status = 0) {
    super(problems.map(p => p.message).join(" "));
    this.problems = problems;
    this.status = status;
  }
}
