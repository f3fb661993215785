package gripwright.export.csv;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A table as data: one row for each observation and one column for each variable, with what is
 * known about every column. Immutable.
 *
 * @since 1.0
 */
public final class TidyTable {

  /** What the values of a column are; the words are those of Table Schema. */
  public enum Type {
    /** Text. */
    STRING("string"),
    /** Whole numbers. */
    INTEGER("integer"),
    /** Numbers with a decimal point, never with an exponent. */
    NUMBER("number"),
    /** {@code true} or {@code false}. */
    BOOLEAN("boolean"),
    /** Days such as {@code 2027-01-31}. */
    DATE("date");

    private final String word;

    Type(String word) {
      this.word = word;
    }

    /** Returns the word of Table Schema. */
    public String word() {
      return word;
    }
  }

  /**
   * A column.
   *
   * @param name its heading, unique in the table
   * @param type what its values are
   * @param unit unit of its values, such as {@code kg}; empty if they have none
   * @param description what it means
   * @param missing what stands for a missing value, mostly the empty text
   * @param estimate true if its values come from a model and are no measurement and no plan
   */
  public record Column(
      String name, Type type, String unit, String description, String missing, boolean estimate) {
    /**
     * Checks the name.
     *
     * @throws IllegalArgumentException if the name is empty
     */
    public Column {
      Objects.requireNonNull(type, "type");
      Objects.requireNonNull(unit, "unit");
      Objects.requireNonNull(description, "description");
      Objects.requireNonNull(missing, "missing");
      if (name.isEmpty()) {
        throw new IllegalArgumentException("a column without a name");
      }
    }
  }

  private final String name;
  private final String description;
  private final List<Column> columns;
  private final List<List<String>> rows;

  private TidyTable(Builder built) {
    name = built.name;
    description = built.description;
    columns = List.copyOf(built.columns);
    rows = List.copyOf(built.rows);
  }

  /**
   * Returns a builder for a table without columns and rows.
   *
   * @param name of the table: small letters, digits, {@code -}, {@code _} and {@code .}
   * @param description what a row is
   * @throws IllegalArgumentException if the name has other characters or none
   */
  public static Builder named(String name, String description) {
    return new Builder(name, description);
  }

  /** Returns the name of the table. */
  public String name() {
    return name;
  }

  /** Returns the name of its file. */
  public String fileName() {
    return name + ".csv";
  }

  /** Returns what a row is. */
  public String description() {
    return description;
  }

  /** Returns the columns in order, at least one. */
  public List<Column> columns() {
    return columns;
  }

  /** Returns the rows in order, each with a value for every column. */
  public List<List<String>> rows() {
    return rows;
  }

  /** Returns a table of the same columns whose texts are replaced. */
  public TidyTable withTexts(UnaryOperator<String> change) {
    Builder changed = new Builder(name, description);
    columns.forEach(changed::column);
    for (List<String> row : rows) {
      List<String> values = new ArrayList<>(row);
      for (int i = 0; i < values.size(); i++) {
        if (columns.get(i).type() == Type.STRING) {
          values.set(i, change.apply(values.get(i)));
        }
      }
      changed.row(values);
    }
    return changed.build();
  }

  /** Returns the table as CSV by RFC 4180, with a header line. */
  public String csv() {
    CsvText text = new CsvText();
    text.line(columns.stream().map(Column::name).toList());
    rows.forEach(text::line);
    return text.toString();
  }

  /** Collects columns and rows. Not thread-safe. */
  public static final class Builder {
    private final String name;
    private final String description;
    private final List<Column> columns = new ArrayList<>();
    private final Set<String> names = new HashSet<>();
    private final List<List<String>> rows = new ArrayList<>();

    private Builder(String name, String description) {
      if (!name.matches("[a-z0-9._-]+")) {
        throw new IllegalArgumentException("not the name of a table: " + name);
      }
      this.name = name;
      this.description = Objects.requireNonNull(description, "description");
    }

    /**
     * Adds a column.
     *
     * @throws IllegalArgumentException if there is one with its name
     * @throws IllegalStateException if there are rows
     */
    public Builder column(Column column) {
      if (!rows.isEmpty()) {
        throw new IllegalStateException("a column after rows: " + column.name());
      }
      if (!names.add(column.name())) {
        throw new IllegalArgumentException("two columns " + column.name());
      }
      columns.add(column);
      return this;
    }

    /**
     * Adds a row.
     *
     * @param values a value for each column, in order
     * @throws IllegalArgumentException if there are more or fewer values than columns
     */
    public Builder row(List<String> values) {
      if (values.size() != columns.size()) {
        throw new IllegalArgumentException(
            values.size() + " values for " + columns.size() + " columns of " + name);
      }
      rows.add(List.copyOf(values));
      return this;
    }

    /**
     * Returns the table.
     *
     * @throws IllegalStateException if it has no column
     */
    public TidyTable build() {
      if (columns.isEmpty()) {
        throw new IllegalStateException("table " + name + " has no column");
      }
      return new TidyTable(this);
    }
  }
}
