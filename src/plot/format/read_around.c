#include "plot/format/read_around.h"
#include "plot/format/read_block.h"

#include <stdlib.h>

bool read_service(struct later_reader *r, struct scan *s, struct diag *d)
{
	static const struct value_rule kind_rule = { .kind = VALUE_CHOICE, .words = service_words };
	static const struct value_rule state_rule = { .kind = VALUE_CHOICE,
		.words = service_states };
	enum units units = plot_units(r->plot);
	struct value kind, state;
	char *name;

	if (!value_scan(s, &kind_rule, units, &kind, d) ||
		!scan_quoted(s, 1, NAME_MOST, &name, d))
		return false;
	if (!value_scan(s, &state_rule, units, &state, d)) {
		free(name);
		return false;
	}
	r->service = services_add(&r->plot->details.around.services,
		(enum service_kind)kind.as.number, state.as.number, name);
	return scan_end(s, d);
}

bool read_service_line(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct service *service = r->service;
	struct scan ahead = *s;
	size_t length;
	const char *word = scan_word(&ahead, &length);

	if (!scan_word_is(word, length, "line"))
		return read_block_line(&service->block, s, plot_units(r->plot), d);
	return read_route(&r->plot->ground, &ahead, routes_add(&service->routes), NULL, d);
}

/* ---- Houses, shade and what is kept ---------------------------------------------------------- */

static bool read_obstacle(struct later_reader *r, struct obstacles *obstacles, struct scan *s,
	struct diag *d)
{
	char *name;

	if (!scan_quoted(s, 1, NAME_MOST, &name, d))
		return false;
	r->obstacle = obstacles_add(obstacles, name);
	r->is_placed = false;
	return true;
}

/* The length that ends the line. */
static bool read_last(struct later_reader *r, struct scan *s, const struct value_rule *rule,
	nm *length, struct diag *d)
{
	struct value value;

	if (!value_scan(s, rule, plot_units(r->plot), &value, d))
		return false;
	*length = value.as.length;
	return scan_end(s, d);
}

bool read_house(struct later_reader *r, struct scan *s, struct diag *d)
{
	return read_obstacle(r, &r->plot->details.around.houses, s, d) &&
		(scan_is_done(s) || read_last(r, s, &height_rule, &r->obstacle->height, d));
}

bool read_shade(struct later_reader *r, struct scan *s, struct diag *d)
{
	return read_obstacle(r, &r->plot->details.around.shades, s, d) &&
		read_last(r, s, &height_rule, &r->obstacle->height, d);
}

bool read_keep(struct later_reader *r, struct scan *s, struct diag *d)
{
	return read_obstacle(r, &r->plot->details.around.kept, s, d) &&
		(scan_is_done(s) || read_last(r, s, &radius_rule, &r->obstacle->radius, d));
}

const char *obstacle_line_words(const struct obstacle *obstacle)
{
	return obstacle->radius ? "at X,Y" : "from X,Y to X,Y";
}

bool read_obstacle_line(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct obstacle *obstacle = r->obstacle;
	bool is_circle = obstacle->radius > 0;
	size_t length;
	const char *word = scan_word(s, &length);

	if (scan_word_is(word, length, "note"))
		return read_note(&obstacle->notes, s, d);
	if (!scan_word_is(word, length, is_circle ? "at" : "from"))
		return scan_fail(s, 0, d, "%s, or note", obstacle_line_words(obstacle));
	if (r->is_placed)
		return scan_fail(s, 0, d, "each keyword once");
	r->is_placed = true;
	if (is_circle ? !read_point(&r->plot->ground, s, &obstacle->at, d) :
		!read_rectangle(s, &obstacle->cells, d))
		return false;
	return scan_end(s, d);
}

/* ---- Ties, the drop and the tap -------------------------------------------------------------- */

bool read_tie(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct value length;
	struct place at;
	char *name;

	if (!read_point(&r->plot->ground, s, &at, d) || !scan_quoted(s, 1, NAME_MOST, &name, d))
		return false;
	if (!value_scan(s, &tie_rule, plot_units(r->plot), &length, d)) {
		free(name);
		return false;
	}
	ties_add(&r->plot->details.around.ties, at, name, length.as.length);
	return scan_end(s, d);
}

/* A line that the plot may have once. */
static bool read_only_point(const struct later_reader *r, struct scan *s, bool *has,
	struct place *at, struct diag *d)
{
	if (*has)
		return scan_fail(s, 0, d, "each keyword once");
	*has = read_point(&r->plot->ground, s, at, d);
	return *has && scan_end(s, d);
}

bool read_drop(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct surroundings *around = &r->plot->details.around;

	return read_only_point(r, s, &around->has_drop, &around->drop, d);
}

bool read_tap(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct surroundings *around = &r->plot->details.around;

	return read_only_point(r, s, &around->has_tap, &around->tap, d);
}
