package dev.thinair.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tag balance and escaping, enough to know that a browser will not guess. */
final class Markup {

    private static final Pattern TAG = Pattern.compile("<(/?)([a-z][a-z0-9]*)(?: [^<>]*)?>");

    private Markup() {}

    static void assertWellFormed(String markup) {
        Deque<String> open = new ArrayDeque<>();
        Matcher tag = TAG.matcher(markup);
        StringBuilder text = new StringBuilder();
        int end = 0;
        while (tag.find()) {
            text.append(markup, end, tag.start());
            end = tag.end();
            if (tag.group(1).isEmpty()) {
                open.push(tag.group(2));
            } else {
                assertThat(tag.group(2)).as("closing tag").isEqualTo(open.poll());
            }
        }
        text.append(markup.substring(end));
        assertThat(open).as("tags left open").isEmpty();
        assertThat(text.toString()).doesNotContain("<", ">");
        assertThat(text.toString().replaceAll("&(amp|lt|gt|quot);", "")).doesNotContain("&");
    }
}
