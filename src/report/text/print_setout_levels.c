#include "report/text/print.h"
#include "base/stop.h"
#include "report/text/setout_words.h"
#include "takeoff/setout/point_levels.h"

/* The table of corners and posts, string by string; gates hang on posts. */
struct readings {
	struct table table; /* first */
	const struct report *report;
	const struct setout *setout;
	struct surface surface;
	int most; /* how many are listed */
	int listed, string;
	bool is_walking; /* along the string */
	struct setout_walk walk;
};

static bool next_point(struct readings *readings, struct setout_point *point)
{
	const struct setout *setout = readings->setout;

	while (readings->string < setout->string_count && !stop_asked()) {
		if (!readings->is_walking)
			readings->walk = setout_along(setout, &setout->strings[readings->string]);
		readings->is_walking = setout_next(&readings->walk, point);
		readings->string += !readings->is_walking;
		if (readings->is_walking && point->kind != SETOUT_GATE)
			return true;
	}
	return false;
}

/* "11 in"; where several walls meet "B1 11 in, B2 9 in"; "-" where none does. */
static const char *formation_words(const struct report *report, const struct point_levels *levels)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < levels->wall_count; i++) {
		const struct wall_level *wall = levels->walls[i];

		text_print(&words, "%s%s%s%s", i > 0 ? ", " : "",
			levels->wall_count > 1 ? plain_region(report, wall->region) : "",
			levels->wall_count > 1 ? "\t" : "", reading_words(report, wall->formation));
	}
	text_add(&words, words.length ? "" : "-");
	return say_text(report, &words);
}

static bool next_row(struct table *table, const char *cells[])
{
	struct readings *readings = (struct readings *)table;
	const struct report *report = readings->report;
	struct point_levels levels;
	struct setout_point point;

	arena_clear(report->words);
	if (readings->listed == readings->most || !next_point(readings, &point)) {
		readings->listed = readings->string = 0;
		readings->is_walking = false;
		return false;
	}
	readings->listed++;
	point_levels_find(&levels, &point, &readings->surface, &report->takeoff->wall_levels);
	cells[0] = point_name_words(report, &point);
	cells[1] = tape_words(report, point.at.x);
	cells[2] = tape_words(report, point.at.y);
	cells[3] = reading_words(report, levels.ground);
	cells[4] = MEASURED;
	cells[5] = formation_words(report, &levels);
	return true;
}

void print_setout_levels(const struct report *report, const struct setout *setout, int most)
{
	static const struct table_column columns[] = {
		{ "Point", COLUMN_LEFT }, { "Across", COLUMN_RIGHT }, { "Down", COLUMN_RIGHT },
		{ "Level", COLUMN_RIGHT }, { "Measured", COLUMN_LEFT },
		{ "Formation", COLUMN_WRAPS },
	};
	bool has_walls = report->takeoff->wall_levels.count > 0;
	struct readings readings = { .table = { columns, has_walls ? 6 : 5, 0, next_row, 0 },
		.report = report, .setout = setout, .most = most,
		.surface = surface_of(&report->takeoff->plot) };
	int all = setout->corner_count + setout->post_count;

	if (!surface_is_told(&readings.surface) || all == 0)
		return;
	print_note(report, "Levels: finished ground at each point as a staff reads it, down from "
		"the level string line; with a minus, up from it.%s", has_walls ?
		" Formation: what is dug to under a wall that turns there." : "");
	print_blank(report);
	table_print(&readings.table, report->out);
	if (all > most)
		print_lines(report, 0, 0, "And %s more points: parterre setout FILE has them all.",
			plain_count(report, all - most));
}
