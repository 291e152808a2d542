#include "editor/here_around.h"
#include "prices/in_force.h"
#include "survey/surface.h"
#include "takeoff/services/service_values.h"

void here_sides(const struct leg *legs, size_t count, struct place cell, struct text *out)
{
	static const char *const words[] = { "left", "above", "right", "below" };
	int x = cell.x, y = cell.y;
	const struct leg sides[] = {
		{ { x, y }, { x, y + 1 } }, { { x, y }, { x + 1, y } },
		{ { x + 1, y }, { x + 1, y + 1 } }, { { x, y + 1 }, { x + 1, y + 1 } },
	};

	for (size_t i = 0; i < sizeof sides / sizeof *sides; i++) {
		bool is_covered = false;

		for (size_t j = 0; j < count && !is_covered; j++)
			is_covered = leg_covers(legs[j], sides[i]);
		if (is_covered)
			text_print(out, "%s%s", out->length ? ", " : "", words[i]);
	}
}

static const char *depth_words(const struct report *report, const struct plot *plot,
	const struct service *service)
{
	return !service_has_depth(service) ? "depth not known" :
		say(report, "%s deep", word_inches(report, service_depth(plot, service)));
}

/* "Water below: Supply to the basin, 18 in deep, existing". Of a plot in force. */
static void service_words_add(const struct report *report, const struct plot *plot,
	const struct service *service, struct place at, struct text *out)
{
	struct text sides = TEXT_EMPTY;
	struct legs legs = LEGS_EMPTY;

	routes_legs(&service->routes, &legs);
	here_sides(legs.items, legs.count, at, &sides);
	if (sides.length)
		text_print(out, "%s %s: %s, %s, %s\n",
			capital(report, service_words[service->kind]), sides.bytes, service->name,
			depth_words(report, plot, service),
			service->is_to_lay ? "to lay" : "existing");
	legs_fini(&legs);
	text_fini(&sides);
}

/* Most cells have none: the map says whether to look. */
static void services_words(const struct editor *editor, const struct report *report,
	struct text *out)
{
	const struct around_map *map = &editor->around;
	const int right = EXISTING_RIGHT | TO_LAY_RIGHT, below = EXISTING_BELOW | TO_LAY_BELOW;
	struct place at = editor->cursor;
	int around = (around_map_at(map, at.x, at.y) & (right | below)) |
		(around_map_at(map, at.x - 1, at.y) & right) |
		(around_map_at(map, at.x, at.y - 1) & below);
	const struct services *services;
	struct plot plot;

	if (!around)
		return;
	plot = plot_in_force(report->words, editor->plot, editor->has_book ? &editor->book : NULL);
	services = &plot.details.around.services;
	for (size_t i = 0; i < services->count; i++)
		service_words_add(report, &plot, &services->items[i], at, out);
}

static void obstacles_words(const struct editor *editor, const struct obstacles *obstacles,
	const char *word, struct text *out)
{
	nm cell = plot_cell(editor->plot);

	for (size_t i = 0; i < obstacles->count; i++)
		if (obstacle_touches(&obstacles->items[i], cell, editor->cursor.x,
			editor->cursor.y))
			text_print(out, "%s: %s\n", word, obstacles->items[i].name);
}

/* Of the grid points that are marked at this cell. */
static void points_words(const struct editor *editor, const struct report *report,
	struct text *out)
{
	const struct surroundings *around = &editor->plot->details.around;
	const struct ground *ground = &editor->plot->ground;

	if (around->has_drop && place_equal(ground_nearest(ground, around->drop), editor->cursor))
		text_add(out, "Deliveries are put down here\n");
	if (around->has_tap && place_equal(ground_nearest(ground, around->tap), editor->cursor))
		text_add(out, "Water comes from a tap here\n");
	for (size_t i = 0; i < around->ties.count; i++) {
		const struct tie *tie = &around->ties.items[i];

		if (place_equal(ground_nearest(ground, tie->at), editor->cursor))
			text_print(out, "Tied to %s, %s\n", tie->name,
				word_length(report, tie->length));
	}
}

/* The ground in the middle of the cell, and what it is to be where that is told. */
static void level_words(const struct editor *editor, const struct report *report, struct text *out)
{
	const struct surface surface = surface_of(editor->plot);
	nm cell = plot_cell(editor->plot);
	nm right = editor->cursor.x * cell + cell / 2, down = editor->cursor.y * cell + cell / 2;

	if (surface.has_levels)
		text_print(out, "Ground %s below the string\n", word_inches(report,
			surface_existing(&surface, right, down)));
	if (surface.has_finish)
		text_print(out, "Finished ground %s below the string\n", word_inches(report,
			surface_finished(&surface, right, down)));
}

void here_around_words(const struct editor *editor, const struct report *report, struct text *out)
{
	const struct surroundings *around = &editor->plot->details.around;

	services_words(editor, report, out);
	obstacles_words(editor, &around->houses, "House", out);
	obstacles_words(editor, &around->shades, "Shade", out);
	obstacles_words(editor, &around->kept, "Kept", out);
	points_words(editor, report, out);
	level_words(editor, report, out);
}
