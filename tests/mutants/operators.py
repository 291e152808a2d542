"""Mutations: what is made of a line of C by one small mistake that a test should find."""
import re

from source import is_declaration

NEIGHBOURS = {
    'relation': {'<': ('<=', '>='), '<=': ('<', '>'), '>': ('>=', '<='), '>=': ('>', '<'),
                 '==': ('!=',), '!=': ('==',)},
    'arithmetic': {'+': ('-',), '-': ('+',), '*': ('/',), '/': ('*',), '%': ('*',),
                   '<<': ('>>',), '>>': ('<<',), '&': ('|',), '|': ('&',), '^': ('&',)},
    'logic': {'&&': ('||',), '||': ('&&',)},
    'assignment': {'+=': ('-=', '='), '-=': ('+=', '='), '*=': ('/=', '='), '/=': ('*=', '='),
                   '%=': ('=',), '|=': ('&=', '='), '&=': ('|=', '='), '^=': ('|=',),
                   '<<=': ('>>=',), '>>=': ('<<=',)},
}
BINARY = re.compile(r'(?<=[\w)\]}"\'] )([-+*/%&|^<>=!]+)(?=\s|$)')
STEP = re.compile(r'\+\+|--')
NUMBER = re.compile(
    r'(?<![\w.])(\d+(?:\.\d+)?(?:[eE][-+]?\d+)?|0[xX][0-9a-fA-F]+)[uUlLfF]*(?![\w.])')
TRUTH = re.compile(r'\b(true|false)\b')
OPENED = re.compile(r'\b(if|while) \(')
LOOP = re.compile(r'\bfor \([^;]*; ([^;]+);')
CHOICE = re.compile(r' \? ')
NOT = re.compile(r'!(?=[\w(])')
MINUS = re.compile(r'(?<=[(\[{])-(?=[\w(])|(?<=[=,?:] )-(?=[\w(])|(?<=return )-(?=[\w(])')
RETURN = re.compile(r'\breturn ([^;]+);')
FREES = re.compile(r'\s*((\w*_)?(free|fini)\w*|arena_clear)\(')
TRIVIAL = {'0', '1', '-1', 'NULL', 'true', 'false'}


def put(text, start, end, new):
    return text[:start] + new + text[end:]


def closing(bare, start):
    """Where the bracket that is open before `start` is closed on the line; -1 if further on."""
    depth = 0
    for at in range(start, len(bare)):
        if bare[at] in '([{':
            depth += 1
        elif bare[at] in ')]}':
            if depth == 0:
                return at
            depth -= 1
    return -1


def condition_start(bare, end):
    """Where the condition begins that stands before the question mark at `end`; -1 if before the
    line."""
    depth = 0
    for at in range(end - 1, -1, -1):
        if bare[at] in ')]}':
            depth += 1
        elif bare[at] in '([{':
            if depth == 0:
                return at + 1
            depth -= 1
        elif depth == 0 and (bare[at] in ',;?:' or
                             bare[at] == '=' and bare[at - 1] == bare[at + 1] == ' '):
            return at + 1
        elif depth == 0 and bare.startswith('return ', at):
            return at + len('return ')
    return -1


def neighbours(line):
    for found in BINARY.finditer(line.bare):
        for kind, others in NEIGHBOURS.items():
            for other in others.get(found[1], ()):
                yield kind, put(line.text, *found.span(1), other)
    for found in STEP.finditer(line.bare):
        yield 'assignment', put(line.text, *found.span(), '--' if found[0] == '++' else '++')


def constants(line):
    for found in NUMBER.finditer(line.bare):
        if is_declaration(line.bare) and line.bare[found.start() - 1] == '[':
            continue                                # how much room there is
        if '.' in found[1] or 'e' in found[1].lower() and 'x' not in found[1].lower():
            others = [f'{float(found[1]) * factor:.12g}' for factor in (0.9, 1.1)]
            others = [other if '.' in other or 'e' in other else other + '.0' for other in others]
        else:
            value = int(found[1], 0 if found[1][:2].lower() == '0x' else 10)
            others = [str(value + 1), str(value - 1) if value else '(-1)']
        for other in others:
            yield 'constant', put(line.text, *found.span(1), other)
    for found in TRUTH.finditer(line.bare):
        yield 'truth', put(line.text, *found.span(), 'false' if found[0] == 'true' else 'true')


def turned(line, start, end, kinds):
    """The condition at start to end the other way round, always met, never met."""
    condition = line.text[start:end].strip()
    forms = {'not': f'!({condition})', 'met': f'(({condition}) || 1)',
             'never': f'(({condition}) && 0)'}
    blank = ' ' if line.text[start] == ' ' else ''
    for kind in kinds:
        yield 'condition', put(line.text, start, end, blank + forms[kind])


def conditions(line):
    for found in OPENED.finditer(line.bare):
        end = closing(line.bare, found.end())
        if end > 0:
            yield from turned(line, found.end(), end,
                              ('not', 'met', 'never') if found[1] == 'if' else ('not', 'never'))
    for found in LOOP.finditer(line.bare):
        yield from turned(line, *found.span(1), ('never',))
    for found in CHOICE.finditer(line.bare):
        start = condition_start(line.bare, found.start())
        if start >= 0 and line.bare[start:found.start()].strip():
            yield from turned(line, start, found.start(), ('not', 'met', 'never'))
    for sign in (NOT, MINUS):
        for found in sign.finditer(line.bare):
            yield 'sign', put(line.text, *found.span(), '')


def statements(line):
    code = line.bare.strip()
    found = RETURN.search(line.bare)
    if found and found[1].strip() not in TRIVIAL:
        value = line.text[slice(*found.span(1))]
        for other in ('0', f'!({value})', f'({value}) + 1'):
            yield 'return', put(line.text, *found.span(1), other)
    if (line.begins and code.endswith(';') and code.count('(') == code.count(')') and
            not found and not is_declaration(line.bare) and not FREES.match(line.bare) and
            re.match(r'[\w*(]|\+\+|--', code) and code.count(';') == 1 and
            not re.match(r'(if|for|while|else|case|default|do)\b', code)):
        indent = line.text[:len(line.text) - len(line.text.lstrip())]
        yield 'deleted', indent + ';'


def mutations(line):
    """All of (kind, new text) for a line; of a table its constants alone."""
    makers = (constants,) if line.is_table else (neighbours, constants, conditions, statements)
    return [made for maker in makers for made in maker(line)]
