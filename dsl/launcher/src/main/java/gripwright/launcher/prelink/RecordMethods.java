package gripwright.launcher.prelink;

import java.util.List;
import java.util.stream.Stream;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Generates as methods of a record what {@link java.lang.runtime.ObjectMethods} assembles at run
 * time: equals, hashCode and toString.
 */
final class RecordMethods {

  private static final int SYNTHETIC =
      Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC;

  private final ClassVisitor out;
  private final Type record;
  private final List<String> names;
  private final List<Handle> fields;

  private RecordMethods(ClassVisitor out, Type record, List<String> names, List<Handle> fields) {
    this.out = out;
    this.record = record;
    this.names = names;
    this.fields = fields;
  }

  /** Returns the name of the method that does the work of one of the three. */
  static String nameOf(String method) {
    return "linked$" + method;
  }

  /**
   * Writes a method.
   *
   * @param out gets the method
   * @param record internal name of the record
   * @param method which of the three
   * @param arguments the record, the names of its components between semicolons, their fields
   */
  static void write(ClassVisitor out, String record, String method, Object[] arguments) {
    String names = (String) arguments[1];
    RecordMethods methods =
        new RecordMethods(
            out,
            Type.getObjectType(record),
            names.isEmpty() ? List.of() : List.of(names.split(";")),
            Stream.of(arguments).skip(2).map(Handle.class::cast).toList());
    switch (method) {
      case "equals" -> methods.equals();
      case "hashCode" -> methods.hash();
      case "toString" -> methods.print();
      default -> throw new IllegalArgumentException("not a method of every record: " + method);
    }
  }

  private MethodVisitor method(String name, Type returned, Type... taken) {
    MethodVisitor code =
        out.visitMethod(
            SYNTHETIC, nameOf(name), Type.getMethodDescriptor(returned, taken), null, null);
    code.visitCode();
    return code;
  }

  private void equals() {
    MethodVisitor code = method("equals", Type.BOOLEAN_TYPE, record, Type.getType(Object.class));
    Label other = new Label();
    Label unequal = new Label();
    code.visitVarInsn(Opcodes.ALOAD, 0);
    code.visitVarInsn(Opcodes.ALOAD, 1);
    code.visitJumpInsn(Opcodes.IF_ACMPNE, other);
    code.visitInsn(Opcodes.ICONST_1);
    code.visitInsn(Opcodes.IRETURN);
    code.visitLabel(other);
    code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
    code.visitVarInsn(Opcodes.ALOAD, 1);
    code.visitTypeInsn(Opcodes.INSTANCEOF, record.getInternalName());
    code.visitJumpInsn(Opcodes.IFEQ, unequal);
    for (Handle field : fields) {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      get(code, field);
      code.visitVarInsn(Opcodes.ALOAD, 1);
      code.visitTypeInsn(Opcodes.CHECKCAST, record.getInternalName());
      get(code, field);
      jumpIfUnequal(code, Type.getType(field.getDesc()), unequal);
    }
    code.visitInsn(Opcodes.ICONST_1);
    code.visitInsn(Opcodes.IRETURN);
    code.visitLabel(unequal);
    code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
    code.visitInsn(Opcodes.ICONST_0);
    code.visitInsn(Opcodes.IRETURN);
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  private static void jumpIfUnequal(MethodVisitor code, Type type, Label unequal) {
    switch (type.getSort()) {
      case Type.ARRAY, Type.OBJECT -> {
        code.visitMethodInsn(
            Opcodes.INVOKESTATIC,
            "java/util/Objects",
            "equals",
            "(Ljava/lang/Object;Ljava/lang/Object;)Z",
            false);
        code.visitJumpInsn(Opcodes.IFEQ, unequal);
      }
      case Type.LONG -> {
        code.visitInsn(Opcodes.LCMP);
        code.visitJumpInsn(Opcodes.IFNE, unequal);
      }
      case Type.FLOAT, Type.DOUBLE -> {
        code.visitMethodInsn(
            Opcodes.INVOKESTATIC,
            Conversion.wrapper(type),
            "compare",
            Type.getMethodDescriptor(Type.INT_TYPE, type, type),
            false);
        code.visitJumpInsn(Opcodes.IFNE, unequal);
      }
      default -> code.visitJumpInsn(Opcodes.IF_ICMPNE, unequal);
    }
  }

  private void hash() {
    MethodVisitor code = method("hashCode", Type.INT_TYPE, record);
    code.visitInsn(Opcodes.ICONST_0);
    for (Handle field : fields) {
      code.visitIntInsn(Opcodes.BIPUSH, 31);
      code.visitInsn(Opcodes.IMUL);
      code.visitVarInsn(Opcodes.ALOAD, 0);
      get(code, field);
      Type type = Type.getType(field.getDesc());
      boolean isObject = type.getSort() >= Type.ARRAY;
      code.visitMethodInsn(
          Opcodes.INVOKESTATIC,
          isObject ? "java/util/Objects" : Conversion.wrapper(type),
          "hashCode",
          Type.getMethodDescriptor(Type.INT_TYPE, isObject ? Type.getType(Object.class) : type),
          false);
      code.visitInsn(Opcodes.IADD);
    }
    code.visitInsn(Opcodes.IRETURN);
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  private void print() {
    String builder = "java/lang/StringBuilder";
    MethodVisitor code = method("toString", Type.getType(String.class), record);
    code.visitTypeInsn(Opcodes.NEW, builder);
    code.visitInsn(Opcodes.DUP);
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, builder, "<init>", "()V", false);
    code.visitLdcInsn(record);
    code.visitMethodInsn(
        Opcodes.INVOKEVIRTUAL, "java/lang/Class", "getSimpleName", "()Ljava/lang/String;", false);
    append(code, Type.getType(String.class));
    for (int i = 0; i < fields.size(); i++) {
      code.visitLdcInsn((i == 0 ? "[" : ", ") + names.get(i) + "=");
      append(code, Type.getType(String.class));
      code.visitVarInsn(Opcodes.ALOAD, 0);
      get(code, fields.get(i));
      append(code, Type.getType(fields.get(i).getDesc()));
    }
    code.visitLdcInsn(fields.isEmpty() ? "[]" : "]");
    append(code, Type.getType(String.class));
    code.visitMethodInsn(Opcodes.INVOKEVIRTUAL, builder, "toString", "()Ljava/lang/String;", false);
    code.visitInsn(Opcodes.ARETURN);
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  private static void append(MethodVisitor code, Type type) {
    Type taken =
        switch (type.getSort()) {
          case Type.BYTE, Type.SHORT -> Type.INT_TYPE;
          case Type.ARRAY, Type.OBJECT ->
              type.equals(Type.getType(String.class)) ? type : Type.getType(Object.class);
          default -> type;
        };
    code.visitMethodInsn(
        Opcodes.INVOKEVIRTUAL,
        "java/lang/StringBuilder",
        "append",
        Type.getMethodDescriptor(Type.getType(StringBuilder.class), taken),
        false);
  }

  private static void get(MethodVisitor code, Handle field) {
    code.visitFieldInsn(Opcodes.GETFIELD, field.getOwner(), field.getName(), field.getDesc());
  }
}
