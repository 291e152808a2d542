#include "plot/format/read_place.h"
#include "base/memory.h"

void leg_places_add(struct leg_places *places, const struct scan *s)
{
	places->items = memory_grow(places->items, places->count, &places->capacity,
		sizeof *places->items);
	places->items[places->count++] = *s;
}

bool fail_point(const struct scan *s, struct diag *d, const char *expected)
{
	size_t end = s->at;

	if (s->at == s->length)
		return scan_fail(s, s->at, d, "%s", expected);
	while (end < s->length && !char_is_blank(s->text[end]))
		end++;
	return diag_set(d, s->line, (int)s->at + 1, s->text + s->at, end - s->at, "%s", expected);
}

/* X,Y from 0,0 to the last one. */
static bool place_scan(struct scan *s, const char *what, struct place last, struct place *out,
	struct diag *d)
{
	static const struct value_rule place = { .kind = VALUE_PLACE };
	struct text expected = TEXT_EMPTY;
	struct value value;
	struct scan start;

	scan_blanks(s);
	start = *s;
	if (value_scan(s, &place, UNITS_IMPERIAL, &value, d) && value.as.place.x <= last.x &&
		value.as.place.y <= last.y) {
		*out = value.as.place;
		return true;
	}
	text_print(&expected, "a %s X,Y from 0,0 to %d,%d", what, last.x, last.y);
	fail_point(&start, d, expected.bytes);
	text_fini(&expected);
	return false;
}

bool read_cell(const struct ground *ground, struct scan *s, struct place *cell, struct diag *d)
{
	return place_scan(s, "cell", (struct place){ ground->columns - 1, ground->rows - 1 }, cell,
		d);
}

bool read_point(const struct ground *ground, struct scan *s, struct place *point, struct diag *d)
{
	return place_scan(s, "grid point", (struct place){ ground->columns, ground->rows }, point,
		d);
}

bool read_leg(const struct ground *ground, struct scan *s, struct place from, struct leg *leg,
	struct diag *d)
{
	struct scan start;

	scan_blanks(s);
	start = *s;
	leg->from = from;
	if (!read_point(ground, s, &leg->to, d))
		return false;
	return leg_is_straight(*leg) || fail_point(&start, d,
		"another point, level with the one before or straight above or below it");
}

_Static_assert(ROUTE_POINTS_MOST == 64, "as the message says");

bool read_route(const struct ground *ground, struct scan *s, struct route *route,
	struct leg_places *places, struct diag *d)
{
	struct place point;
	struct leg leg;

	if (!read_point(ground, s, &point, d))
		return false;
	route_add(route, point);
	while (!scan_is_done(s) || route->count < ROUTE_POINTS_LEAST) {
		if (route->count == ROUTE_POINTS_MOST)
			return fail_point(s, d, "the end of the line: 64 points at most");
		if (places)
			leg_places_add(places, s);
		if (!read_leg(ground, s, route->points[route->count - 1], &leg, d))
			return false;
		route_add(route, leg.to);
	}
	return true;
}

/* ---- Rectangles ------------------------------------------------------------------------------ */

static bool coordinate_scan(struct scan *s, int *out)
{
	bool is_minus = scan_peek(s) == '-';
	int64_t number;

	s->at += is_minus;
	if (!scan_decimal(s, 0, &number) || number > CORNER_MOST)
		return false;
	*out = (int)(is_minus ? -number : number);
	return true;
}

_Static_assert(CORNER_MOST == 4096, "as the message says");

static bool corner_scan(struct scan *s, struct place *corner, struct diag *d)
{
	struct scan start;

	scan_blanks(s);
	start = *s;
	if (coordinate_scan(s, &corner->x) && scan_peek(s) == ',') {
		s->at++;
		if (coordinate_scan(s, &corner->y) &&
			(s->at == s->length || char_is_blank(scan_peek(s))))
			return true;
	}
	return fail_point(&start, d, "a corner X,Y, from -4096,-4096 to 4096,4096");
}

bool read_rectangle(struct scan *s, struct rectangle *cells, struct diag *d)
{
	struct place from = { 0, 0 }, to = { 0, 0 };
	const char *word;
	struct scan start;
	size_t length;

	if (!corner_scan(s, &from, d))
		return false;
	scan_blanks(s);
	start = *s;
	word = scan_word(s, &length);
	if (!scan_word_is(word, length, "to"))
		return fail_point(&start, d, "to, as in from -2,-12 to 14,-2");
	scan_blanks(s);
	start = *s;
	if (!corner_scan(s, &to, d))
		return false;
	*cells = (struct rectangle){ from.x, from.y, to.x - 1, to.y - 1 };
	return (from.x < to.x && from.y < to.y) || fail_point(&start, d,
		"a corner right of the first one and below it");
}
