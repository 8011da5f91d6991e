/**
 * Expressions: lexer, parser, checker and evaluator of the one small language of cells, needs, studies and the command
 * line. It sees names only through {@link farwatt.language.Scope}; {@link farwatt.language.Language} is the way in.
 */
@NullMarked
package farwatt.language;

import org.jspecify.annotations.NullMarked;
