package gripwright.launcher.prelink;

import java.util.Map;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Generates code that converts the value on top of the stack as a method call would. */
final class Conversion {

  private static final String OBJECT = "java/lang/Object";

  private static final Map<String, Type> WRAPPERS =
      Map.of(
          "java/lang/Boolean", Type.BOOLEAN_TYPE,
          "java/lang/Character", Type.CHAR_TYPE,
          "java/lang/Byte", Type.BYTE_TYPE,
          "java/lang/Short", Type.SHORT_TYPE,
          "java/lang/Integer", Type.INT_TYPE,
          "java/lang/Float", Type.FLOAT_TYPE,
          "java/lang/Long", Type.LONG_TYPE,
          "java/lang/Double", Type.DOUBLE_TYPE);

  private final MethodVisitor code;

  Conversion(MethodVisitor code) {
    this.code = code;
  }

  /**
   * Converts a value.
   *
   * @param from its type
   * @param exact its type after type arguments are applied
   * @param to the required type
   */
  void convert(Type from, Type exact, Type to) {
    if (isPrimitive(from)) {
      if (isPrimitive(to)) {
        widen(from, to);
      } else {
        box(from);
      }
      return;
    }
    if (!isPrimitive(to)) {
      cast(from, exact);
      cast(exact, to);
      return;
    }
    Type inside = WRAPPERS.get(exact.getInternalName());
    if (inside != null) {
      unbox(from, exact.getInternalName(), inside);
      widen(inside, to);
    } else if (to.getSort() == Type.BOOLEAN || to.getSort() == Type.CHAR) {
      unbox(from, wrapper(to), to);
    } else {
      unbox(from, "java/lang/Number", to); // of any number, as a method call would
    }
  }

  private void unbox(Type from, String wrapper, Type inside) {
    cast(from, Type.getObjectType(wrapper));
    code.visitMethodInsn(
        Opcodes.INVOKEVIRTUAL,
        wrapper,
        inside.getClassName() + "Value",
        Type.getMethodDescriptor(inside),
        false);
  }

  private void cast(Type from, Type to) {
    if (!from.equals(to) && !to.getInternalName().equals(OBJECT)) {
      code.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
    }
  }

  private void box(Type type) {
    String wrapper = wrapper(type);
    code.visitMethodInsn(
        Opcodes.INVOKESTATIC,
        wrapper,
        "valueOf",
        Type.getMethodDescriptor(Type.getObjectType(wrapper), type),
        false);
  }

  private void widen(Type from, Type to) {
    int opcode = widening(from.getSort(), to.getSort());
    if (opcode != Opcodes.NOP) {
      code.visitInsn(opcode);
    }
  }

  private static int widening(int from, int to) {
    if (from == to) {
      return Opcodes.NOP;
    }
    return switch (from) {
      case Type.LONG -> to == Type.FLOAT ? Opcodes.L2F : Opcodes.L2D;
      case Type.FLOAT -> Opcodes.F2D;
      default ->
          switch (to) {
            case Type.LONG -> Opcodes.I2L;
            case Type.FLOAT -> Opcodes.I2F;
            case Type.DOUBLE -> Opcodes.I2D;
            default -> Opcodes.NOP;
          };
    };
  }

  private static boolean isPrimitive(Type type) {
    return type.getSort() < Type.ARRAY;
  }

  /** Returns the internal name of the class that wraps a primitive type. */
  static String wrapper(Type primitive) {
    for (Map.Entry<String, Type> wrapper : WRAPPERS.entrySet()) {
      if (wrapper.getValue().equals(primitive)) {
        return wrapper.getKey();
      }
    }
    throw new IllegalArgumentException("not a primitive type: " + primitive);
  }
}
