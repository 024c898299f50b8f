package io.github.saltfront.app.export;

import io.github.saltfront.words.Language;
import io.github.saltfront.words.Phrases;
import java.util.Base64;
import java.util.List;

/** The frame of an explanation: one file, three depths, questions whose answers are folded away. */
final class ExplainPage {
    private static final Phrases PHRASES = Phrases.of(ExplainPage.class);

    private static final String STYLE = """
            :root{color-scheme:light dark;--ground:#fff;--ink:#14252a;--soft:#47595e;--line:#c3cfcf;--tint:#eef4f5;--accent:#17657f}
            @media(prefers-color-scheme:dark){:root{--ground:#101c1f;--ink:#e9efed;--soft:#a9babc;--line:#2d4248;--tint:#17292e;--accent:#83c8dc}}
            body{font:18px/1.6 Georgia,"Noto Serif",serif;margin:0;background:var(--ground);color:var(--ink)}
            main{max-width:46rem;margin:0 auto;padding:1.2rem}
            h1{font-size:1.8rem;line-height:1.2}h2{font-size:1.35rem;margin-top:2.4rem;border-top:2px solid var(--line);padding-top:1rem}
            h3{font-size:1.08rem;margin-bottom:.3rem}nav ol{padding-left:1.2rem}a{color:var(--accent)}
            figure{margin:1rem 0}figure svg,figure img{max-width:100%;height:auto;background:#fff;border-radius:8px}
            figcaption,.soft{color:var(--soft);font-size:.92rem}
            table{border-collapse:collapse;font-size:.95rem}td,th{border-bottom:1px solid var(--line);padding:.3rem 1rem .3rem 0;text-align:left}
            .scroll{overflow-x:auto}
            .formula{font-family:"Cambria Math",Georgia,serif;background:var(--tint);padding:.6rem 1rem;border-radius:8px;overflow-x:auto}
            details{background:var(--tint);border-radius:8px;padding:.4rem 1rem;margin:.6rem 0}summary{cursor:pointer;padding:.4rem 0;font-weight:bold}
            @media print{details{background:none}body{font-size:12pt}}
            """;

    private final StringBuilder out = new StringBuilder();

    ExplainPage(String title) {
        out.append("<!DOCTYPE html>\n<html lang=\"" + Language.spoken().tag() + "\"><head><meta charset=\"utf-8\"/>")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/><title>")
                .append(LethalityPage.escape(title))
                .append("</title><style>\n")
                .append(STYLE)
                .append("</style></head><body><main>\n<h1>")
                .append(LethalityPage.escape(title))
                .append("</h1>\n");
    }

    void contents(List<String> sections) {
        out.append("<nav aria-label=\"" + PHRASES.say("contents") + "\"><ol>");
        for (int i = 0; i < sections.size(); i++) {
            out.append("<li><a href=\"#s")
                    .append(i + 1)
                    .append("\">")
                    .append(LethalityPage.escape(sections.get(i)))
                    .append("</a></li>");
        }
        out.append("</ol></nav>\n");
    }

    void section(int number, String title) {
        out.append("<h2 id=\"s")
                .append(number)
                .append("\">")
                .append(LethalityPage.escape(title))
                .append("</h2>\n");
    }

    void head(String title) {
        out.append("<h3>").append(LethalityPage.escape(title)).append("</h3>\n");
    }

    void text(String words) {
        out.append("<p>").append(LethalityPage.escape(words)).append("</p>\n");
    }

    void formula(String words) {
        out.append("<p class=\"formula\">").append(LethalityPage.escape(words)).append("</p>\n");
    }

    void figure(String svg, String caption) {
        out.append("<figure>")
                .append(svg)
                .append("<figcaption>")
                .append(LethalityPage.escape(caption))
                .append("</figcaption></figure>\n");
    }

    /** Folded, so that nothing moves before somebody wants it to. */
    void film(byte[] gif, String caption) {
        out.append("<details><summary>" + PHRASES.say("play") + "</summary><figure><img loading=\"lazy\" width=\"")
                .append(FrontsGif.WIDTH)
                .append("\" height=\"")
                .append(FrontsGif.HEIGHT)
                .append("\" alt=\"")
                .append(LethalityPage.escape(caption))
                .append("\" src=\"data:image/gif;base64,")
                .append(Base64.getEncoder().encodeToString(gif))
                .append("\"/><figcaption>")
                .append(LethalityPage.escape(caption))
                .append("</figcaption></figure></details>\n");
    }

    void table(List<String> head, List<List<String>> rows) {
        out.append("<div class=\"scroll\"><table><thead><tr>");
        head.forEach(h ->
                out.append("<th scope=\"col\">").append(LethalityPage.escape(h)).append("</th>"));
        out.append("</tr></thead><tbody>\n");
        for (List<String> row : rows) {
            out.append("<tr>");
            row.forEach(cell ->
                    out.append("<td>").append(LethalityPage.escape(cell)).append("</td>"));
            out.append("</tr>\n");
        }
        out.append("</tbody></table></div>\n");
    }

    void question(int number, String question, String answer) {
        out.append("<p><b>")
                .append(number)
                .append(".</b> ")
                .append(LethalityPage.escape(question))
                .append("</p><details><summary>" + PHRASES.say("answer") + "</summary><p>")
                .append(LethalityPage.escape(answer))
                .append("</p></details>\n");
    }

    String end() {
        return out.append("</main></body></html>\n").toString();
    }
}
