/** Finger-strength planning: the domain and its numbers, without text, files, clock or JSON. */
module gripwright.core {
  requires static org.jspecify;
  requires hipparchus.core;
  requires hipparchus.optim;

  exports gripwright.budget;
  exports gripwright.quantity;
  exports gripwright.finding;
  exports gripwright.ability;
  exports gripwright.hand;
  exports gripwright.statics;
  exports gripwright.grip;
  exports gripwright.tissue;
  exports gripwright.strength;
  exports gripwright.protocol;
  exports gripwright.athlete;
  exports gripwright.log;
  exports gripwright.plan;
  exports gripwright.schedule;
  exports gripwright.change;
  exports gripwright.history;
  exports gripwright.expression;
  exports gripwright.rule;
  exports gripwright.survey;
  exports gripwright.season;
  exports gripwright.review;
  exports gripwright.compare;
  exports gripwright.trial;
  exports gripwright.diff;
  exports gripwright.wording;
}
