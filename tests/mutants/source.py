"""What of a C source can hold a mistake: its lines, one by one.

The sources are taken as they are laid out in this project: a function's braces stand in the first
column, binary operators have a blank on both sides, a declaration begins with its type.
"""
import re
from dataclasses import dataclass

NAME = re.compile(r'(\w+)\(')
COMMENT_OR_QUOTED = re.compile(
    r'/\*.*?\*/|//[^\n]*|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])*\'', re.S)
DECLARATION = re.compile(
    r'\s*(?:(?:static|const|unsigned|struct|enum|union|_Noreturn)\s+)*'
    r'(?!return\b|else\b|goto\b|case\b)[A-Za-z_]\w*\s+\**[A-Za-z_]\w*\s*[=;,\[({]')


@dataclass(frozen=True)
class Line:
    """A line that does something, or a row of a table."""
    number: int         # from 1 on
    text: str
    bare: str           # text with blanks for comments and for what is quoted
    is_table: bool      # outside functions: no test program is seen to reach it
    begins: bool        # a statement begins here
    function: int       # the number of the line its function begins at; 0 for a table
    name: str           # of the function; '' for a table


def bare_of(text):
    """The text with blanks for comments and for what stands between quotes, as long as before."""
    def blank(match):
        found = match.group()
        inner = re.sub(r'[^\n]', ' ', found[1:-1])
        return f'{found[0]}{inner}{found[0]}' if found[0] in '"\'' else re.sub(r'[^\n]', ' ', found)
    return COMMENT_OR_QUOTED.sub(blank, text)


def is_declaration(bare):
    return DECLARATION.match(bare) is not None


def lines_of(text):
    """The lines of a source that are worth a mutation: neither blank nor of the preprocessor, no
    assert, no prototype, no declaration that gives no value."""
    bare_lines = bare_of(text).split('\n')
    found = []
    function = begun = 0            # the line of the head of the function we are in, or may be
    name = ''
    in_table = in_assert = in_macro = False
    before = ';'                    # the last sign of the code before
    for number, (line, bare) in enumerate(zip(text.split('\n'), bare_lines), 1):
        code = bare.strip()
        is_macro = in_macro or code.startswith('#')
        in_macro = is_macro and line.endswith('\\')
        if is_macro or not code:
            continue
        if bare[0] not in ' \t{}':
            begun = number
            in_table = '=' in code or code.startswith('enum')
        if bare[0] == '{':
            function, in_table = begun, False
            head = NAME.search(bare_lines[begun - 1])
            name = head[1] if head else ''
        in_assert = in_assert or code.startswith(('assert(', 'static_assert('))
        if not in_assert and (function or in_table) and not (
                is_declaration(bare) and '=' not in bare):
            found.append(Line(number, line, bare, not function,
                              before in ';{}:)' or before == 'else', function, name))
        if in_assert and code.endswith(';'):
            in_assert = False
        if bare[0] == '}':
            function, in_table, name = 0, False, ''
        before = 'else' if code.endswith('else') else code[-1]
    return found
