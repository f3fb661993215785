package gripwright.export.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A table in which each column is a variable and each row an observation (Wickham H 2014, J Stat
 * Softw 59(10)), with what its columns mean. Immutable.
 *
 * @param name of the table and, with {@code .csv}, of its file
 * @param description what a row is
 * @param columns the columns
 * @param rows each with a field for every column; empty where a value is missing
 */
public record TidyTable(
    String name, String description, List<Column> columns, List<List<String>> rows) {

  /** Types of fields, as Table Schema names them. */
  public enum Type {
    /** Text. */
    STRING,
    /** A whole number. */
    INTEGER,
    /** A number. */
    NUMBER,
    /** True or false. */
    BOOLEAN,
    /** A day, such as 2027-01-11. */
    DATE
  }

  /**
   * A column.
   *
   * @param name of the column
   * @param type of its fields
   * @param unit of its numbers; empty for none
   * @param estimate whether it is estimated by a model
   * @param description what it means
   */
  public record Column(String name, Type type, String unit, boolean estimate, String description) {
    /** Refuses null. */
    public Column {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(type, "type");
      Objects.requireNonNull(unit, "unit");
      Objects.requireNonNull(description, "description");
    }
  }

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if a row has not one field for each column
   */
  public TidyTable {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(description, "description");
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<String> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            "table " + name + ": " + row.size() + " fields for " + columns.size() + " columns");
      }
    }
  }

  /** Returns the name of the file. */
  public String file() {
    return name + ".csv";
  }

  /** Returns the table as CSV by RFC 4180, with a line of headings. */
  public String csv() {
    CsvText text = new CsvText();
    List<String> headings = new ArrayList<>();
    columns.forEach(column -> headings.add(column.name()));
    text.line(headings);
    rows.forEach(text::line);
    return text.toString();
  }
}
