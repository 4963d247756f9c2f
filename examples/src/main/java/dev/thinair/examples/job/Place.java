package dev.thinair.examples.job;

/**
 * Where something stands in a job file.
 *
 * @param file the file's name as the user gave it
 * @param line line, counted from 1
 * @param column column, counted from 1
 * @param path the keys that lead there, such as {@code ducts.runs[3].diameter}; empty at the top
 */
public record Place(String file, int line, int column, String path) {

    Place child(String key, int line, int column) {
        return new Place(file, line, column, path.isEmpty() ? key : path + "." + key);
    }

    Place item(int number, int line, int column) {
        return new Place(file, line, column, path + "[" + number + "]");
    }

    @Override
    public String toString() {
        String where = file + ":" + line + ":" + column;
        return path.isEmpty() ? where : where + ": " + path;
    }
}
