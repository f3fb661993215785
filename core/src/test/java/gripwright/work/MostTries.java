package gripwright.work;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Holds a property that asks for a number of tries of its own to {@code gripwright.tries.most},
 * where that is set, as it is in the quick build.
 */
public final class MostTries implements AroundPropertyHook {

  private static final int MOST = Integer.getInteger("gripwright.tries.most", Integer.MAX_VALUE);

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
