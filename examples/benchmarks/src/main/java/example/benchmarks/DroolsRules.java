package example.benchmarks;

import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.runtime.StatelessKieSession;

/** The rules of {@code rules.drl} in Drools, as Java that it generates and compiles itself. */
final class DroolsRules {

  private static final String FILE = "src/main/resources/example/benchmarks/rules.drl";

  private final KieBase base;

  DroolsRules() {
    KieServices services = KieServices.get();
    KieFileSystem files = services.newKieFileSystem();
    files.write(FILE, Resource.text("rules.drl"));
    KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
    if (builder.getResults().hasMessages(Message.Level.ERROR)) {
      throw new IllegalStateException(builder.getResults().toString());
    }
    base = services.newKieContainer(services.getRepository().getDefaultReleaseId()).getKieBase();
  }

  RuleBreaches check(RuleFacts facts) {
    StatelessKieSession session = base.newStatelessKieSession();
    RuleBreaches breaches = new RuleBreaches();
    session.setGlobal("breaches", breaches);
    session.execute(facts.all());
    return breaches;
  }
}
