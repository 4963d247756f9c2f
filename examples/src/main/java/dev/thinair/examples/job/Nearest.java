package dev.thinair.examples.job;

import java.util.Collection;
import java.util.Optional;

/** The known word that a mistyped one was most likely meant to be. */
final class Nearest {
    private Nearest() {}

    /** The word with the fewest edits, if they are few enough to be a slip. */
    static Optional<String> of(String typed, Collection<String> known) {
        String best = null;
        int fewest = Math.max(2, typed.length() / 3) + 1;
        for (String word : known) {
            int d = edits(typed, word);
            if (d < fewest) {
                fewest = d;
                best = word;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Insertions, deletions and substitutions that turn one word into the other (Levenshtein). */
    static int edits(String a, String b) {
        if (a.length() > 60) {
            return Integer.MAX_VALUE;
        }
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int above = row[j];
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(above, row[j - 1]) + 1, diagonal + change);
                diagonal = above;
            }
        }
        return row[b.length()];
    }
}
