/*
 * The grammar of a season file.
 *
 * A file is lines, and every line parses alone: words, numbers, dates, texts and commas in a row.
 * What the words mean is no business of the grammar. The table of clauses
 * (slipday.language.Clauses) gives each line its meaning, so that there are no reserved words, a
 * mistake costs one message, and a mistake never hides a later one.
 *
 * The lexer never fails: OTHER takes any character that nothing else takes, and OPEN_TEXT a text
 * whose closing quote is missing, so that each gets a message of its own.
 */
grammar Season;

file: (NL | line)* EOF;

line: (WORD | MIXED | NUMBER | DATE | TEXT | OPEN_TEXT | COMMA | PERCENT | OTHER)+ (NL | EOF);

DATE: DIGIT DIGIT DIGIT DIGIT '-' DIGIT DIGIT '-' DIGIT DIGIT;

NUMBER: [-+\u2212]? DIGIT+ ('.' DIGIT+)?;

// Starts with a digit and is no number: a tag (3A), a quantity without its space (12m), a season
// (2026-27), or a mistake (3-5). The shape of the clause decides.
MIXED: DIGIT (WORD_CHAR | [.\-/] | '\u2013' | '\u2212')*;

WORD: LETTER (WORD_CHAR | [.\-/'\u2019])*;

TEXT: QUOTE ~["\u201C\u201D\u201E\r\n]* QUOTE;

OPEN_TEXT: QUOTE ~["\u201C\u201D\u201E\r\n]*;

COMMA: ',';

PERCENT: '%';

NL: '\r'? '\n' | '\r';

COMMENT: '#' ~[\r\n]* -> channel(HIDDEN);

SPACE: [ \t\u00A0\u2009\u202F\uFEFF]+ -> skip;

OTHER: .;

fragment DIGIT: [0-9];

fragment LETTER: [\p{Letter}] | '\u00B0';

fragment WORD_CHAR: [\p{Letter}\p{Mark}0-9_] | '\u00B0';

fragment QUOTE: ["\u201C\u201D\u201E];
