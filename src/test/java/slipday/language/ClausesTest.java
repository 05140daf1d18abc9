package slipday.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of the table of clauses as a whole. */
class ClausesTest {
  static Stream<Arguments> everyClauseEverywhere() {
    return Clauses.all().stream()
        .flatMap(c -> c.where().stream().map(d -> Arguments.of(d, c.name(), c)));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("everyClauseEverywhere")
  void everyExampleBindsWhereItMayStand(Declaration under, String name, Clause clause) {
    var bound = Texts.bind(under.example() + "\n  " + clause.example() + "\n");
    assertThat(bound.findings()).isEmpty();
    assertThat(bound.value().blocks()).hasSize(1);
    assertThat(bound.value().blocks().get(0).find(clause)).as(name).isPresent();
  }

  static Stream<Arguments> everyDatedClause() {
    return Clauses.all().stream().filter(Clause::isDated).map(c -> Arguments.of(c.name(), c));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("everyDatedClause")
  void everyExampleOfTheRecordBinds(String name, Clause clause) {
    var bound = Texts.bind(clause.example());
    assertThat(bound.findings()).isEmpty();
    assertThat(bound.value().entries()).singleElement().extracting(Entry::clause).isEqualTo(clause);
  }

  @Test
  void theRecordHasItsVerbs() {
    assertThat(everyDatedClause()).hasSizeGreaterThan(30);
    assertThat(Clauses.all().stream().filter(Clause::isDated).map(Clause::name))
        .doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @EnumSource
  void everyDeclarationsExampleBinds(Declaration declaration) {
    var bound = Texts.bind(declaration.example());
    assertThat(bound.findings()).isEmpty();
    assertThat(bound.value().blocks().get(0).declaration()).isEqualTo(declaration);
    assertThat(bound.value().blocks().get(0).head()).isPresent();
  }

  @ParameterizedTest
  @EnumSource
  void clausesUnderOneDeclarationDifferInTheirWords(Declaration declaration) {
    List<Clause> under = Clauses.under(declaration);
    assertThat(under).extracting(Clause::name).doesNotHaveDuplicates();
    assertThat(under.isEmpty()).isEqualTo(!declaration.hasClauses());
  }

  @Test
  void noClauseBeginsWithADeclarationWord() {
    assertThat(Clauses.all())
        .allSatisfy(c -> assertThat(Declaration.words()).doesNotContain(c.words().get(0)));
  }

  @Test
  void clauseWordsAreLowerCaseAndSentencesEnd() {
    assertThat(Clauses.all())
        .allSatisfy(
            c -> {
              assertThat(c.name()).matches("[a-z-]+( [a-z]+)*");
              assertThat(c.sentence()).matches("[A-Z].*\\.");
              String words = c.isDated() ? c.example().substring(11) : c.example();
              assertThat(words).startsWith(c.name() + " ");
            });
  }

  @Test
  void everyKindOfValueIsUsed() {
    Set<String> used = new HashSet<>();
    Stream.concat(
            Clauses.all().stream().map(Clause::shape),
            Arrays.stream(Declaration.values()).map(Declaration::head))
        .map(Shape::notation)
        .forEach(
            n ->
                Arrays.stream(Kind.values())
                    .filter(
                        k -> n.contains("<" + k.word() + ">") || n.contains("<" + k.word() + ":"))
                    .forEach(k -> used.add(k.word())));
    assertThat(used)
        .containsExactlyInAnyOrderElementsOf(Arrays.stream(Kind.values()).map(Kind::word).toList());
  }

  /** A longer clause must not be taken for a shorter one followed by its value. */
  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("everyClauseEverywhere")
  void theLongestClauseIsTaken(Declaration under, String name, Clause clause) {
    var line = Texts.parse(clause.example()).lines().get(0);
    assertThat(Clauses.of(under, line.words())).as(name).contains(clause);
  }
}
