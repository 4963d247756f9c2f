package dev.thinair.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Runs the code blocks of a page in one shell session, in order, and holds what they print to the
 * text block below them: words exactly, numbers within five percent, which is less than a reader
 * would call another answer; a line of three dots stands for any lines. With {@code
 * -Dpages.write=true} it writes the text blocks instead.
 */
final class PageRun {
    private static final Pattern BLOCK =
            Pattern.compile("```(java|jshell|text)\n(.*?)```", Pattern.DOTALL);
    private static final Pattern NUMBER =
            Pattern.compile("[-+]?\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?");
    private static final double SHARE = 0.05;

    private PageRun() {}

    /**
     * Runs a page and returns what each of its code blocks printed.
     *
     * @param page the page
     * @param before run first
     * @param beforeShell run before the first block for the interactive shell
     */
    static List<String> of(Path page, String before, String beforeShell) throws IOException {
        String text = Files.readString(page);
        StringBuilder written = new StringBuilder();
        List<String> printed = new ArrayList<>();
        Matcher block = BLOCK.matcher(text);
        try (ShellRun shell = new ShellRun()) {
            shell.run(before);
            boolean inShell = false;
            while (block.find()) {
                if (block.group(1).equals("jshell") && !inShell) {
                    shell.run(beforeShell);
                    inShell = true;
                }
                if (!block.group(1).equals("text")) {
                    printed.add(shell.run(block.group(2)));
                    continue;
                }
                assertThat(printed).as("code before the first text block of %s", page).isNotEmpty();
                String last = printed.get(printed.size() - 1);
                if (Boolean.getBoolean("pages.write") && !block.group(2).contains("...")) {
                    String fresh = "```text\n" + last.stripTrailing() + "\n```";
                    block.appendReplacement(written, Matcher.quoteReplacement(fresh));
                } else if (!Boolean.getBoolean("pages.write")) {
                    assertSame(page, block.group(2), last);
                }
            }
        }
        if (Boolean.getBoolean("pages.write")) {
            block.appendTail(written);
            Files.writeString(page, written);
        }
        return printed;
    }

    private static void assertSame(Path page, String said, String printed) {
        List<String> lines = printed.lines().toList();
        int at = 0;
        boolean gap = false;
        for (String line : said.lines().toList()) {
            if (line.equals("...")) {
                gap = true;
                continue;
            }
            int found = at;
            while (gap && found < lines.size() && !same(line, lines.get(found))) {
                found++;
            }
            assertThat(found < lines.size() && same(line, lines.get(found)))
                    .as("%s says \"%s\" is printed, but it is:%n%s", page, line, printed)
                    .isTrue();
            at = found + 1;
            gap = false;
        }
        assertThat(gap || at == lines.size())
                .as("%s leaves out the end of what is printed:%n%s", page, printed)
                .isTrue();
    }

    private static boolean same(String said, String printed) {
        if (!words(said).equals(words(printed))) {
            return false;
        }
        List<Double> wanted = numbers(said);
        List<Double> got = numbers(printed);
        for (int i = 0; i < wanted.size(); i++) {
            double most = SHARE * Math.abs(wanted.get(i)) + 0.02;
            if (!(Math.abs(got.get(i) - wanted.get(i)) <= most)) {
                return false;
            }
        }
        return true;
    }

    private static String words(String text) {
        return NUMBER.matcher(text).replaceAll("#").strip();
    }

    private static List<Double> numbers(String text) {
        return NUMBER.matcher(text).results().map(r -> Double.valueOf(r.group())).toList();
    }
}
