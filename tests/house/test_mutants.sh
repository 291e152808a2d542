#!/bin/sh
# What tests/mutants takes for a line worth breaking and what it makes of it; and that all that is
# listed there as no different from the original can still be made of the sources.

tests/mutants/run --check || exit 1

cd tests/mutants && python3 -B - <<'END'
from operators import mutations
from source import lines_of

SOURCE = '''#define TWO 2
static const int sizes[] = {
\t3, /* 4 */
};

bool is_odd(int number)
{
\tint rest;
\tassert(number >= 0);
\trest = number % 2;
\tif (rest == 1)
\t\tsay("5 < 6");
\tfree(rest);
\treturn rest && true;
}
'''
made = {line.number: {(kind, new.strip()) for kind, new in mutations(line)}
        for line in lines_of(SOURCE)}
made = {number: found for number, found in made.items() if found}
assert made == {
    3: {('constant', '4, /* 4 */'), ('constant', '2, /* 4 */')},
    10: {('arithmetic', 'rest = number * 2;'), ('constant', 'rest = number % 3;'),
         ('constant', 'rest = number % 1;'), ('deleted', ';')},
    11: {('relation', 'if (rest != 1)'), ('constant', 'if (rest == 2)'),
         ('constant', 'if (rest == 0)'), ('condition', 'if (!(rest == 1))'),
         ('condition', 'if (((rest == 1) || 1))'), ('condition', 'if (((rest == 1) && 0))')},
    12: {('deleted', ';')},
    14: {('logic', 'return rest || true;'), ('truth', 'return rest && false;'),
         ('return', 'return 0;'), ('return', 'return !(rest && true);'),
         ('return', 'return (rest && true) + 1;')},
}, made
END
