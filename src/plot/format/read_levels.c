#include "plot/format/read_levels.h"

bool read_levels(struct later_reader *r, struct scan *s, struct diag *d)
{
	const struct ground *ground = &r->plot->ground;
	struct levels *levels = &r->plot->details.levels;
	nm cell = plot_cell(r->plot);
	size_t start = s->at;
	struct value step;
	int64_t columns, rows;

	if (levels->step)
		return scan_fail(s, 0, d, "each keyword once");
	if (!value_scan(s, &step_rule, plot_units(r->plot), &step, d))
		return false;
	columns = levels_count(ground->columns, cell, step.as.length);
	rows = levels_count(ground->rows, cell, step.as.length);
	if (columns > LEVELS_SIDE_MOST || rows > LEVELS_SIDE_MOST)
		return scan_fail(s, start, d,
			"a longer step: at most %d drops in a row and %d rows", LEVELS_SIDE_MOST,
			LEVELS_SIDE_MOST);
	levels_init(levels, step.as.length, (int)columns, (int)rows);
	r->levels = levels;
	r->rows_read = 0;
	return scan_end(s, d);
}

bool read_drops(struct later_reader *r, struct scan *s, struct diag *d)
{
	const struct levels *levels = r->levels;
	nm *drops = levels->drops + (size_t)r->rows_read * (size_t)levels->columns;
	struct value drop;

	if (r->rows_read == levels->rows)
		return scan_fail(s, 0, d, "the end of the levels: their %d rows are there",
			levels->rows);
	for (int i = 0; i < levels->columns; i++) {
		if (i && !scan_take(s, ','))
			return scan_fail(s, s->at, d, "a comma: %d drops are in a row, not %d",
				levels->columns, i);
		if (!value_scan(s, &drop_rule, plot_units(r->plot), &drop, d))
			return false;
		drops[i] = drop.as.length;
	}
	r->rows_read++;
	return scan_is_done(s) || scan_fail(s, s->at, d, "the end of the row after %d drops",
		levels->columns);
}

bool read_finish(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct finish *finish = &r->plot->details.finish;
	struct value drop;

	if (finish->has_level)
		return scan_fail(s, 0, d, "each keyword once");
	if (!read_point(&r->plot->ground, s, &finish->at, d) ||
		!value_scan(s, &drop_rule, plot_units(r->plot), &drop, d))
		return false;
	finish->has_level = true;
	finish->drop = drop.as.length;
	return scan_end(s, d);
}

bool read_fall(struct later_reader *r, struct scan *s, struct diag *d)
{
	static const struct value_rule way_rule = { .kind = VALUE_CHOICE, .words = fall_words };
	struct finish *finish = &r->plot->details.finish;
	enum units units = plot_units(r->plot);
	struct value percent, way, bearing = { .as.number = 0 };

	if (finish->has_fall)
		return scan_fail(s, 0, d, "each keyword once");
	if (!value_scan(s, &fall_rule, units, &percent, d) ||
		!value_scan(s, &way_rule, units, &way, d))
		return false;
	finish->is_away = way.as.number;
	if (!finish->is_away && !value_scan(s, &bearing_rule, units, &bearing, d))
		return false;
	finish->has_fall = true;
	finish->percent = percent.as.number;
	finish->bearing = bearing.as.number;
	return scan_end(s, d);
}
