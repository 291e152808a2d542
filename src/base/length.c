#include "base/length.h"

#include <assert.h>
#include <string.h>

struct unit {
	const char *word;
	nm size;
	enum units system;
	bool touches; /* follows its number without a blank */
};

/* Longest words first, so that "mm" is not taken for "m". */
static const struct unit unit_table[] = {
	{ "ft", NM_PER_FOOT, UNITS_IMPERIAL, false }, { "in", NM_PER_INCH, UNITS_IMPERIAL, false },
	{ "'", NM_PER_FOOT, UNITS_IMPERIAL, true },   { "\"", NM_PER_INCH, UNITS_IMPERIAL, true },
	{ "mm", NM_PER_MM, UNITS_METRIC, false },     { "cm", NM_PER_CM, UNITS_METRIC, false },
	{ "m", NM_PER_M, UNITS_METRIC, false },
};

enum { PLACES = 6, MILLION = 1000000, NUMBER_SAID_MOST = 39 };

/* A number as whole, millionths and a fraction: at most one of the last two is there. */
struct number {
	int64_t whole, millionths, numerator, denominator;
	bool is_whole;
	size_t fraction_at; /* where the fraction is in the line */
};

static bool is_letter(char c)
{
	return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/* Takes the unit that comes next; NULL where none does. */
static const struct unit *unit_scan(struct scan *s)
{
	size_t number_end = s->at;

	scan_blanks(s);
	for (size_t i = 0; i < sizeof unit_table / sizeof *unit_table; i++) {
		const struct unit *unit = &unit_table[i];
		size_t length = strlen(unit->word);
		bool fits = s->length - s->at >= length &&
			memcmp(s->text + s->at, unit->word, length) == 0;

		if (!fits || (unit->touches && s->at != number_end))
			continue;
		if (!unit->touches && s->at + length < s->length &&
			is_letter(s->text[s->at + length]))
			continue;
		s->at += length;
		return unit;
	}
	s->at = number_end;
	return NULL;
}

/* A fraction, "1/2": false, nothing taken, where none comes next. Its denominator is 0 where it is
 * not one of 2, 4 .. 64. */
static bool fraction_scan(struct scan *s, struct number *n)
{
	struct scan ahead = *s;
	int64_t above, below = 0;

	if (!scan_decimal(&ahead, 0, &above) || scan_peek(&ahead) != '/')
		return false;
	ahead.at++;
	if (!scan_decimal(&ahead, 0, &below) || below < 2 || below > 64 || (below & (below - 1)))
		below = 0;
	n->fraction_at = s->at;
	n->numerator = above;
	n->denominator = below;
	n->is_whole = false;
	*s = ahead;
	return true;
}

/* 6, 6.25, 1/2 or 6 1/2. False where there is no such number. */
static bool number_scan(struct scan *s, struct number *n)
{
	size_t start = s->at;
	int64_t units;
	struct scan ahead;

	*n = (struct number){ .denominator = 1, .is_whole = true };
	if (fraction_scan(s, n))
		return true;
	if (!scan_decimal(s, PLACES, &units))
		return false;
	n->whole = units / MILLION;
	n->millionths = units % MILLION;
	n->is_whole = !memchr(s->text + start, '.', s->at - start);
	ahead = *s;
	scan_blanks(&ahead);
	if (n->is_whole && ahead.at > s->at && fraction_scan(&ahead, n))
		*s = ahead;
	return true;
}

static bool no_length(const struct scan *s, size_t start, enum units units, struct diag *d)
{
	return scan_fail(s, start, d, "a length with its unit, such as %s",
		units == UNITS_METRIC ? "150 mm" : "6 1/2 in");
}

/* Reads the number of a length's part, which starts at s->at. */
static bool part_number(struct scan *s, enum units units, struct number *n, struct diag *d)
{
	if (!char_is_digit(scan_peek(s)))
		return no_length(s, s->at, units, d);
	if (!number_scan(s, n))
		return scan_fail(s, s->at, d,
			"a length of at most 10 km with at most 6 decimal places");
	return n->denominator || scan_fail(s, n->fraction_at, d,
		"a fraction in 2, 4, 8, 16, 32 or 64 parts, such as 1/2");
}

static nm divide_rounded(nm dividend, nm divisor)
{
	return (dividend + divisor / 2) / divisor;
}

/* Number times unit in nanometres; more than LENGTH_MOST where it would be too long. */
static nm number_times(const struct number *n, nm unit)
{
	assert(n->denominator > 0);
	if (n->whole > LENGTH_MOST / unit || n->numerator > LENGTH_MOST / unit)
		return LENGTH_MOST + 1;
	return n->whole * unit + divide_rounded(n->millionths * unit, MILLION) +
		divide_rounded(n->numerator * unit, n->denominator);
}

/* Offers the same number with a unit, where a message has room for it. */
static bool bare_number(const struct scan *s, size_t start, enum units units, struct diag *d)
{
	size_t length = s->at - start;

	if (length > NUMBER_SAID_MOST)
		return no_length(s, start, units, d);
	return scan_fail(s, start, d, "a length with its unit, such as %.*s %s", (int)length,
		s->text + start, units == UNITS_METRIC ? "mm" : "in");
}

/* True where another part of a length follows: a digit. */
static bool part_follows(const struct scan *s)
{
	struct scan ahead = *s;

	scan_blanks(&ahead);
	return char_is_digit(scan_peek(&ahead));
}

bool length_scan(struct scan *s, enum units units, nm *length, struct diag *d)
{
	const struct unit *last = NULL;
	nm total = 0;

	do {
		struct number number = { .denominator = 1 };
		const struct unit *unit;
		size_t start;

		scan_blanks(s);
		start = s->at;
		if (!part_number(s, units, &number, d))
			return false;
		unit = unit_scan(s);
		if (!unit)
			return bare_number(s, start, units, d);
		if (last && unit->system != last->system)
			return scan_fail(s, start, d,
				"one system of units in a length");
		if (last && unit->size >= last->size)
			return scan_fail(s, start, d, "a smaller unit than the one before it");
		total += number_times(&number, unit->size);
		if (total > LENGTH_MOST)
			return scan_fail(s, start, d, "a length of at most 10 km");
		last = unit;
		if (part_follows(s) && !number.is_whole)
			return scan_fail(s, start, d,
				"a fraction or decimal only before the last unit");
	} while (part_follows(s));
	*length = total;
	return true;
}

void length_write_inches(struct text *out, nm length)
{
	int64_t parts = length / NM_PER_64TH, whole = parts / 64, above = parts % 64, below = 64;

	while (above && above % 2 == 0) {
		above /= 2;
		below /= 2;
	}
	if (whole || !above)
		text_print(out, "%lld%s", (long long)whole, above ? " " : "");
	if (above)
		text_print(out, "%lld/%lld", (long long)above, (long long)below);
	text_add(out, " in");
}

void length_write(struct text *out, nm length, enum units units)
{
	if (length < 0) {
		text_add(out, "-");
		length = -length;
	}
	if (units == UNITS_IMPERIAL && length && length % NM_PER_FOOT == 0) {
		text_print(out, "%lld ft", (long long)(length / NM_PER_FOOT));
	} else if (units == UNITS_IMPERIAL && length % NM_PER_64TH == 0) {
		length_write_inches(out, length);
	} else if (units == UNITS_METRIC && length && length % NM_PER_M == 0) {
		text_print(out, "%lld m", (long long)(length / NM_PER_M));
	} else {
		text_add_decimal(out, length, 6);
		text_add(out, " mm");
	}
}
