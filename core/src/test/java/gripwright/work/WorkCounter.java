package gripwright.work;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * Runs a test with copies of our classes, and of the libraries that do our work, which call {@link
 * Work#step} in every method and loop. The test class is copied as well: what the original keeps in
 * static fields, the copy has anew.
 */
public final class WorkCounter implements InvocationInterceptor {

  private static final List<String> COUNTED =
      List.of("gripwright.", "org.antlr.v4.", "org.hipparchus.");
  private static final String NOT_COUNTED = WorkCounter.class.getPackageName() + ".";
  private static final String WORK = Work.class.getName().replace('.', '/');

  @Override
  public void interceptTestMethod(
      Invocation<Void> invocation,
      ReflectiveInvocationContext<Method> test,
      ExtensionContext context)
      throws Throwable {
    invocation.skip();
    Class<?> copy =
        context
            .getRoot()
            .getStore(ExtensionContext.Namespace.create(WorkCounter.class))
            .getOrComputeIfAbsent(test.getTargetClass(), WorkCounter::copied, Class.class);
    Constructor<?> constructor = copy.getDeclaredConstructor();
    constructor.setAccessible(true);
    Method method = method(copy, test.getExecutable().getName());
    method.setAccessible(true);
    try {
      method.invoke(constructor.newInstance());
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }

  private static Method method(Class<?> type, String name) throws NoSuchMethodException {
    try {
      return type.getDeclaredMethod(name);
    } catch (NoSuchMethodException e) {
      if (type.getSuperclass() == null) {
        throw e;
      }
      return method(type.getSuperclass(), name);
    }
  }

  private static Class<?> copied(Class<?> test) {
    try {
      return new Copies(test.getClassLoader()).loadClass(test.getName());
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  private static final class Copies extends ClassLoader {
    Copies(ClassLoader parent) {
      super(parent);
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      if (COUNTED.stream().noneMatch(name::startsWith) || name.startsWith(NOT_COUNTED)) {
        return super.loadClass(name, resolve);
      }
      synchronized (getClassLoadingLock(name)) {
        Class<?> loaded = findLoadedClass(name);
        return loaded != null ? loaded : findClass(name);
      }
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
      try (InputStream bytes = getResourceAsStream(name.replace('.', '/') + ".class")) {
        if (bytes == null) {
          throw new ClassNotFoundException(name);
        }
        byte[] counting = counting(bytes.readAllBytes());
        return defineClass(name, counting, 0, counting.length);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static byte[] counting(byte[] bytes) {
    ClassReader reader = new ClassReader(bytes);
    ClassWriter writer = new ClassWriter(reader, ClassWriter.COMPUTE_MAXS);
    reader.accept(
        new ClassVisitor(Opcodes.ASM9, writer) {
          @Override
          public MethodVisitor visitMethod(
              int access, String name, String type, String signature, String[] thrown) {
            return new Counting(super.visitMethod(access, name, type, signature, thrown));
          }
        },
        0);
    return writer.toByteArray();
  }

  private static final class Counting extends MethodVisitor {
    /** Methods with one argument that go through a list or move what stands behind. */
    private static final Set<String> THROUGH_ALL =
        Set.of("contains", "indexOf", "lastIndexOf", "remove", "containsAll", "removeAll");

    private final Set<Label> behind = new HashSet<>();

    Counting(MethodVisitor next) {
      super(Opcodes.ASM9, next);
    }

    private void step() {
      super.visitMethodInsn(Opcodes.INVOKESTATIC, WORK, "step", "()V", false);
    }

    @Override
    public void visitCode() {
      super.visitCode();
      step();
    }

    @Override
    public void visitLabel(Label label) {
      super.visitLabel(label);
      behind.add(label);
    }

    @Override
    public void visitJumpInsn(int opcode, Label label) {
      if (behind.contains(label)) {
        step();
      }
      super.visitJumpInsn(opcode, label);
    }

    @Override
    public void visitMethodInsn(
        int opcode, String owner, String name, String type, boolean ofInterface) {
      boolean oneArgument = type.matches("\\((I|L[^;]+;)\\).*");
      if (opcode != Opcodes.INVOKESTATIC
          && owner.startsWith("java/util/")
          && THROUGH_ALL.contains(name)
          && oneArgument) {
        super.visitInsn(Opcodes.DUP2);
        super.visitInsn(Opcodes.POP);
        super.visitMethodInsn(Opcodes.INVOKESTATIC, WORK, "all", "(Ljava/lang/Object;)V", false);
      }
      super.visitMethodInsn(opcode, owner, name, type, ofInterface);
    }
  }
}
