package io.github.saltfront.app.probe;

/** Finds the character between cells. */
final class Separators {
    private static final int LINES = 30;

    private Separators() {}

    /** Semicolons and tabs are never decimal signs, so they win over commas wherever most lines hold one. */
    static char find(String text) {
        int lines = 0;
        int semicolons = 0;
        int tabs = 0;
        int from = 0;
        while (from < text.length() && lines < LINES) {
            int end = text.indexOf('\n', from);
            end = end < 0 ? text.length() : end;
            String line = text.substring(from, end);
            if (!line.isBlank() && !line.startsWith("#")) {
                lines++;
                semicolons += line.indexOf(';') >= 0 ? 1 : 0;
                tabs += line.indexOf('\t') >= 0 ? 1 : 0;
            }
            from = end + 1;
        }
        if (2 * semicolons > lines) {
            return ';';
        }
        return 2 * tabs > lines ? '\t' : ',';
    }
}
