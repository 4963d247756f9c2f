package dev.thinair.reference.report;

import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;

/** Writes 1e5 as 10 with a raised 5. */
final class PowerFormat extends NumberFormat {

    private static final long serialVersionUID = 1L;
    private static final String RAISED =
            "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079";

    @Override
    public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
        to.append("10");
        for (char digit : Long.toString(Math.round(Math.log10(number))).toCharArray()) {
            to.append(digit == '-' ? '\u207b' : RAISED.charAt(digit - '0'));
        }
        return to;
    }

    @Override
    public StringBuffer format(long number, StringBuffer to, FieldPosition position) {
        return format((double) number, to, position);
    }

    @Override
    public Number parse(String source, ParsePosition position) {
        throw new UnsupportedOperationException("a format for axes only");
    }
}
