#include "report/svg/survey_marks.h"
#include "base/stop.h"
#include "report/svg/type.h"

static const nm CROSS = NM_PER_MM * 7 / 10;
static const nm OFF_PLAN = NM_PER_MM; /* offsets of strings from the plan's edge */

/* ---- Levels ---------------------------------------------------------------------------------- */

void survey_marks_cross(const struct sheet *sheet, struct at at)
{
	sheet_pen(sheet, PEN_LEVEL);
	ink_line(sheet->report.out, (struct at){ at.x - CROSS, at.y },
		(struct at){ at.x + CROSS, at.y });
	ink_line(sheet->report.out, (struct at){ at.x, at.y - CROSS },
		(struct at){ at.x, at.y + CROSS });
	sheet_lift(sheet);
}

static void draw_level(struct sheet *sheet, struct at at, const char *words)
{
	survey_marks_cross(sheet, at);
	sheet->left_out[LEFT_DROPS] += !sheet_try_beside(sheet, words, at, CROSS / 2,
		(struct type){ .size = TYPE_LEAST });
}

static void draw_finish(struct sheet *sheet, const struct finish *finish)
{
	if (finish->has_level)
		draw_level(sheet, sheet_point(sheet, finish->at), say(&sheet->report, "finish %s",
			plain_inches(&sheet->report, finish->drop)));
}

void survey_marks_levels(struct sheet *sheet)
{
	const struct levels *levels = &sheet->report.plot->details.levels;
	struct box plan = sheet_plan(sheet);

	sheet_pen(sheet, PEN_WORDS);
	draw_finish(sheet, &sheet->report.plot->details.finish);
	for (int i = 0; i < levels->columns * levels->rows && !stop_asked(); i++) {
		struct at at = sheet_spot(sheet, (struct spot){ i % levels->columns * levels->step,
			i / levels->columns * levels->step });

		if (at.x <= plan.right && at.y <= plan.bottom)
			draw_level(sheet, at, plain_inches(&sheet->report, levels->drops[i]));
		arena_clear(sheet->report.words);
	}
	sheet_lift(sheet);
}

/* ---- Strings --------------------------------------------------------------------------------- */

/* Its offset beyond the plan's right or lower edge. */
static void name_string(struct sheet *sheet, const struct setout_string *string)
{
	const struct type type = { .size = TYPE_LEAST, .is_upright = string->is_upright };
	const char *words = plain_length(&sheet->report,
		setout_rounded(string->at, sheet->report.units));
	nm half = type_width(words, type) / 2 + OFF_PLAN;
	struct box plan = sheet_plan(sheet);
	struct at at = sheet_spot(sheet, (struct spot){ string->at, string->at });
	struct at middle = string->is_upright ? (struct at){ at.x, plan.bottom + half } :
		(struct at){ plan.right + half, at.y };

	sheet->left_out[LEFT_STRINGS] += !sheet_try(sheet, words, middle, type);
}

static void number_points(struct sheet *sheet, const struct setout_string *string)
{
	struct setout_walk walk = setout_along(&sheet->setout, string);
	struct setout_point point;

	while (setout_next(&walk, &point) && !stop_asked()) {
		const char *number = say(&sheet->report, "%d", point.number);

		if (point.kind == SETOUT_CORNER)
			sheet->left_out[LEFT_POINTS] += !sheet_try_beside(sheet, number,
				sheet_spot(sheet, point.at), CROSS / 4,
				(struct type){ .size = TYPE_LEAST });
		arena_clear(sheet->report.words);
	}
}

void survey_marks_strings(struct sheet *sheet)
{
	const struct setout *setout = &sheet->setout;

	sheet_pen(sheet, PEN_STRING);
	for (int i = 0; i < setout->string_count && !stop_asked(); i++)
		ink_line(sheet->report.out, sheet_spot(sheet, setout->strings[i].from),
			sheet_spot(sheet, setout->strings[i].to));
	sheet_lift(sheet);
}

void survey_marks_number(struct sheet *sheet)
{
	const struct setout *setout = &sheet->setout;

	sheet_pen(sheet, PEN_WORDS);
	for (int i = 0; i < setout->string_count && !stop_asked(); i++) {
		name_string(sheet, &setout->strings[i]);
		number_points(sheet, &setout->strings[i]);
	}
	sheet_lift(sheet);
}
