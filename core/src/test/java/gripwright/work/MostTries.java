package gripwright.work;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Holds a property that asks for a number of tries of its own to {@code gripwright.tries.most},
 * where that is set, as it is in the quick build; so are lists that a test goes through.
 */
public final class MostTries implements AroundPropertyHook {

  private static final int MOST = Integer.getInteger("gripwright.tries.most", Integer.MAX_VALUE);

  /** Returns a list, or as many of it, evenly spread, as a property is tried at most. */
  public static <T> List<T> some(List<T> all) {
    if (all.size() <= MOST) {
      return all;
    }
    return IntStream.range(0, MOST)
        .mapToObj(i -> all.get((int) ((long) i * all.size() / MOST)))
        .toList();
  }

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) throws Throwable {
    if (context.attributes().tries().filter(tries -> tries > MOST).isPresent()) {
      context.attributes().setTries(MOST);
    }
    return property.execute();
  }
}
