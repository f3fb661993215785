package gripwright.launcher.prelink;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * The class of a lambda or a method reference: generates as a class file what {@link
 * java.lang.invoke.LambdaMetafactory} creates in memory.
 */
final class LambdaClass {

  /** Name of the static method that takes the captured values and returns the function. */
  static final String MAKE = "make";

  private static final String ONLY = "ONLY";

  private final String name;
  private final String method;
  private final Type[] captured;
  private final Type function;
  private final Type erased;
  private final Handle body;
  private final Type exact;
  private final List<Type> bodyTakes;

  /**
   * A lambda.
   *
   * @param name internal name of the class
   * @param method name of the one method of the function's interface
   * @param descriptor descriptor that takes the captured values and returns the interface
   * @param erased what the interface's method takes and returns, without type arguments
   * @param body what is called
   * @param exact what the interface's method takes and returns with type arguments
   */
  LambdaClass(String name, String method, String descriptor, Type erased, Handle body, Type exact) {
    this.name = name;
    this.method = method;
    this.captured = Type.getArgumentTypes(descriptor);
    this.function = Type.getReturnType(descriptor);
    this.erased = erased;
    this.body = body;
    this.exact = exact;
    this.bodyTakes = new ArrayList<>();
    if (body.getTag() != Opcodes.H_INVOKESTATIC && body.getTag() != Opcodes.H_NEWINVOKESPECIAL) {
      bodyTakes.add(Type.getObjectType(body.getOwner()));
    }
    bodyTakes.addAll(List.of(Type.getArgumentTypes(body.getDesc())));
  }

  /**
   * Returns the class file.
   *
   * @param version of class files
   * @param host internal name of the class that lists this one as a member of its nest
   */
  byte[] bytes(int version, String host) {
    ClassWriter out = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    out.visit(
        version,
        Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC,
        name,
        null,
        "java/lang/Object",
        new String[] {function.getInternalName()});
    out.visitNestHost(host);
    for (int i = 0; i < captured.length; i++) {
      out.visitField(
          Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL,
          field(i),
          captured[i].getDescriptor(),
          null,
          null);
    }
    constructor(out);
    if (captured.length == 0) {
      only(out);
    }
    make(out);
    call(out);
    out.visitEnd();
    return out.toByteArray();
  }

  private static String field(int i) {
    return "captured" + i;
  }

  private void constructor(ClassVisitor out) {
    MethodVisitor code =
        out.visitMethod(
            Opcodes.ACC_PRIVATE,
            "<init>",
            Type.getMethodDescriptor(Type.VOID_TYPE, captured),
            null,
            null);
    code.visitCode();
    code.visitVarInsn(Opcodes.ALOAD, 0);
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
    int slot = 1;
    for (int i = 0; i < captured.length; i++) {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitVarInsn(captured[i].getOpcode(Opcodes.ILOAD), slot);
      code.visitFieldInsn(Opcodes.PUTFIELD, name, field(i), captured[i].getDescriptor());
      slot += captured[i].getSize();
    }
    code.visitInsn(Opcodes.RETURN);
    end(code);
  }

  /** Writes the single instance of a lambda that captures nothing. */
  private void only(ClassVisitor out) {
    String type = "L" + name + ";";
    out.visitField(
        Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, ONLY, type, null, null);
    MethodVisitor code = out.visitMethod(Opcodes.ACC_STATIC, "<clinit>", "()V", null, null);
    code.visitCode();
    code.visitTypeInsn(Opcodes.NEW, name);
    code.visitInsn(Opcodes.DUP);
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, name, "<init>", "()V", false);
    code.visitFieldInsn(Opcodes.PUTSTATIC, name, ONLY, type);
    code.visitInsn(Opcodes.RETURN);
    end(code);
  }

  private void make(ClassVisitor out) {
    MethodVisitor code =
        out.visitMethod(
            Opcodes.ACC_STATIC, MAKE, Type.getMethodDescriptor(function, captured), null, null);
    code.visitCode();
    if (captured.length == 0) {
      code.visitFieldInsn(Opcodes.GETSTATIC, name, ONLY, "L" + name + ";");
    } else {
      code.visitTypeInsn(Opcodes.NEW, name);
      code.visitInsn(Opcodes.DUP);
      int slot = 0;
      for (Type type : captured) {
        code.visitVarInsn(type.getOpcode(Opcodes.ILOAD), slot);
        slot += type.getSize();
      }
      code.visitMethodInsn(
          Opcodes.INVOKESPECIAL,
          name,
          "<init>",
          Type.getMethodDescriptor(Type.VOID_TYPE, captured),
          false);
    }
    code.visitInsn(Opcodes.ARETURN);
    end(code);
  }

  private void call(ClassVisitor out) {
    MethodVisitor code =
        out.visitMethod(Opcodes.ACC_PUBLIC, method, erased.getDescriptor(), null, null);
    code.visitCode();
    if (body.getTag() == Opcodes.H_NEWINVOKESPECIAL) {
      code.visitTypeInsn(Opcodes.NEW, body.getOwner());
      code.visitInsn(Opcodes.DUP);
    }
    for (int i = 0; i < captured.length; i++) {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitFieldInsn(Opcodes.GETFIELD, name, field(i), captured[i].getDescriptor());
      new Conversion(code).convert(captured[i], captured[i], bodyTakes.get(i));
    }
    Type[] passed = erased.getArgumentTypes();
    Type[] meant = exact.getArgumentTypes();
    int slot = 1;
    for (int i = 0; i < passed.length; i++) {
      code.visitVarInsn(passed[i].getOpcode(Opcodes.ILOAD), slot);
      slot += passed[i].getSize();
      new Conversion(code).convert(passed[i], meant[i], bodyTakes.get(captured.length + i));
    }
    code.visitMethodInsn(
        opcode(), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
    Type wanted = erased.getReturnType();
    Type got =
        body.getTag() == Opcodes.H_NEWINVOKESPECIAL
            ? Type.getObjectType(body.getOwner())
            : Type.getReturnType(body.getDesc());
    if (wanted.getSort() != Type.VOID) {
      new Conversion(code).convert(got, got, wanted);
    } else if (got.getSize() > 0) {
      code.visitInsn(got.getSize() == 2 ? Opcodes.POP2 : Opcodes.POP);
    }
    code.visitInsn(wanted.getOpcode(Opcodes.IRETURN));
    end(code);
  }

  private int opcode() {
    return switch (body.getTag()) {
      case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
      case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
      // A private method of another member of the nest is called like any other.
      default -> body.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
    };
  }

  private static void end(MethodVisitor code) {
    code.visitMaxs(0, 0);
    code.visitEnd();
  }
}
