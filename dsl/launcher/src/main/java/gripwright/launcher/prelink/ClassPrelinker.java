package gripwright.launcher.prelink;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Links the call sites of one class. */
final class ClassPrelinker extends ClassVisitor {

  private static final String LAMBDAS = "java/lang/invoke/LambdaMetafactory";
  private static final String RECORDS = "java/lang/runtime/ObjectMethods";

  private final Map<String, byte[]> made = new LinkedHashMap<>();
  private final Map<String, Object[]> ofRecord = new LinkedHashMap<>();
  private final ClassWriter writer;
  private final byte[] original;
  private String name = "";
  private String host = "";
  private int version;

  private ClassPrelinker(byte[] original, ClassWriter writer) {
    super(Opcodes.ASM9, writer);
    this.original = original;
    this.writer = writer;
  }

  /** Reads a class file and links its call sites. */
  static ClassPrelinker of(byte[] bytes) {
    ClassPrelinker linker = new ClassPrelinker(bytes, new ClassWriter(ClassWriter.COMPUTE_MAXS));
    new ClassReader(bytes).accept(linker, 0);
    return linker;
  }

  /** Returns the linked class; the same array if there was nothing to link. */
  byte[] linked() {
    return made.isEmpty() && ofRecord.isEmpty() ? original : writer.toByteArray();
  }

  /** Returns the generated classes by internal name. */
  Map<String, byte[]> made() {
    return made;
  }

  /** Returns the internal name of the class that lists the members of the nest. */
  String host() {
    return host;
  }

  @Override
  public void visit(
      int version,
      int access,
      String name,
      @Nullable String signature,
      @Nullable String superName,
      String @Nullable [] interfaces) {
    this.version = version & 0xFFFF;
    this.name = name;
    this.host = name;
    super.visit(version, access, name, signature, superName, interfaces);
  }

  @Override
  public void visitNestHost(String nestHost) {
    host = nestHost;
    super.visitNestHost(nestHost);
  }

  @Override
  public MethodVisitor visitMethod(
      int access,
      String method,
      String descriptor,
      @Nullable String signature,
      String @Nullable [] exceptions) {
    MethodVisitor inner = super.visitMethod(access, method, descriptor, signature, exceptions);
    // From Java 11 on, members of a nest may call each other's private methods.
    return version < Opcodes.V11 ? inner : new Sites(inner);
  }

  @Override
  public void visitEnd() {
    ofRecord.forEach((method, arguments) -> RecordMethods.write(cv, name, method, arguments));
    super.visitEnd();
  }

  /** Links the call sites of a method. */
  private final class Sites extends MethodVisitor {

    Sites(MethodVisitor inner) {
      super(Opcodes.ASM9, inner);
    }

    @Override
    public void visitInvokeDynamicInsn(
        String method, String descriptor, Handle bootstrap, Object... arguments) {
      if (bootstrap.getOwner().equals(LAMBDAS) && bootstrap.getName().equals("metafactory")) {
        String lambda = name + "$$Linked" + made.size();
        made.put(
            lambda,
            new LambdaClass(
                    lambda,
                    method,
                    descriptor,
                    (Type) arguments[0],
                    (Handle) arguments[1],
                    (Type) arguments[2])
                .bytes(version, host));
        visitMethodInsn(Opcodes.INVOKESTATIC, lambda, LambdaClass.MAKE, descriptor, false);
      } else if (bootstrap.getOwner().equals(RECORDS)) {
        ofRecord.put(method, arguments);
        visitMethodInsn(
            Opcodes.INVOKESTATIC, name, RecordMethods.nameOf(method), descriptor, false);
      } else {
        super.visitInvokeDynamicInsn(method, descriptor, bootstrap, arguments);
      }
    }
  }
}
