package dev.thinair.cluster;

import dev.thinair.examples.large.HousesByElevation;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructField;
import org.apache.spark.sql.types.StructType;

/**
 * The large study on Apache Spark: every part a task, rows to Parquet, then read back from there
 * and compared by the same digest as the plain run's files.
 *
 * <p>Arguments, each optional: {@code to=folder or URL}, {@code parts=n}. The master is {@code
 * local[*]} unless {@code spark.master} says otherwise.
 */
public final class LargeStudyOnSpark {
    private static final String PART = "part";
    private static final String PLACE = "place";

    private LargeStudyOnSpark() {}

    public static void main(String[] args) throws Exception {
        String to = Path.of("target", "large-study.parquet").toAbsolutePath().toString();
        int parts = HousesByElevation.PARTS;
        for (String arg : args) {
            if (arg.startsWith("to=")) {
                to = arg.substring(3);
            } else if (arg.startsWith("parts=")) {
                parts = Integer.parseInt(arg.substring(6));
            } else {
                System.err.println("\"" + arg + "\" is none of to=folder, parts=n");
                System.exit(2);
            }
        }
        SparkSession.Builder builder =
                SparkSession.builder()
                        .appName("houses by elevation")
                        .config("spark.ui.enabled", "false");
        if (System.getProperty("spark.master") == null) {
            builder = builder.master("local[*]");
        }
        try (SparkSession spark = builder.getOrCreate()) {
            long start = System.nanoTime();
            List<Integer> numbers = IntStream.range(0, parts).boxed().toList();
            Dataset<Row> rows =
                    spark.createDataFrame(
                            new JavaSparkContext(spark.sparkContext())
                                    .parallelize(numbers, parts)
                                    .flatMap(p -> rows(p).iterator()),
                            schema());
            rows.write().mode(SaveMode.Overwrite).parquet(to);
            double seconds = (System.nanoTime() - start) / 1e9;
            long points = (long) parts * HousesByElevation.ROWS;
            System.out.printf(
                    Locale.ROOT,
                    "computed and stored %,d points in %.1f s, %,.0f a second%n",
                    points,
                    seconds,
                    points / seconds);
            System.out.println("SHA-256 of all parts: " + digest(spark.read().parquet(to), parts));
        }
    }

    private static StructType schema() {
        List<StructField> fields = new ArrayList<>();
        fields.add(DataTypes.createStructField(PART, DataTypes.IntegerType, false));
        fields.add(DataTypes.createStructField(PLACE, DataTypes.IntegerType, false));
        for (String c : HousesByElevation.COLUMNS) {
            fields.add(DataTypes.createStructField(c, DataTypes.DoubleType, false));
        }
        return DataTypes.createStructType(fields);
    }

    private static List<Row> rows(int part) {
        List<Row> rows = new ArrayList<>(HousesByElevation.ROWS);
        for (double[] values : HousesByElevation.part(part)) {
            Object[] cells = new Object[values.length + 2];
            cells[0] = part;
            cells[1] = rows.size();
            for (int c = 0; c < values.length; c++) {
                cells[c + 2] = values[c];
            }
            rows.add(RowFactory.create(cells));
        }
        return rows;
    }

    /** From what was stored, part by part, so that the driver never holds more than one. */
    private static String digest(Dataset<Row> stored, int parts) throws Exception {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        for (int p = 0; p < parts; p++) {
            List<double[]> rows = new ArrayList<>(HousesByElevation.ROWS);
            for (Row row :
                    stored.filter(functions.col(PART).equalTo(p))
                            .orderBy(PLACE)
                            .collectAsList()) {
                double[] values = new double[row.length() - 2];
                for (int c = 0; c < values.length; c++) {
                    values[c] = row.getDouble(c + 2);
                }
                rows.add(values);
            }
            digest.update(HousesByElevation.bytes(rows));
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}
