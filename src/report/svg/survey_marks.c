#include "report/svg/survey_marks.h"
#include "base/stop.h"
#include "report/svg/type.h"

static const nm CROSS = NM_PER_MM * 7 / 10;
static const nm OFF_PLAN = NM_PER_MM; /* offsets of strings from the plan's edge */

/* ---- Levels ---------------------------------------------------------------------------------- */

static void draw_level(struct page *page, struct at at, const char *words)
{
	page_pen(page, PEN_LEVEL);
	ink_line(page->report.out, (struct at){ at.x - CROSS, at.y },
		(struct at){ at.x + CROSS, at.y });
	ink_line(page->report.out, (struct at){ at.x, at.y - CROSS },
		(struct at){ at.x, at.y + CROSS });
	page_lift(page);
	page->left_out[LEFT_DROPS] += !page_try_beside(page, words, at, CROSS / 2,
		(struct type){ .size = TYPE_LEAST });
}

static void draw_finish(struct page *page, const struct finish *finish)
{
	if (finish->has_level)
		draw_level(page, page_point(page, finish->at), say(&page->report, "finish %s",
			plain_inches(&page->report, finish->drop)));
}

void survey_marks_levels(struct page *page)
{
	const struct levels *levels = &page->report.plot->details.levels;
	struct box plan = page_plan(page);

	page_pen(page, PEN_WORDS);
	draw_finish(page, &page->report.plot->details.finish);
	for (int i = 0; i < levels->columns * levels->rows && !stop_asked(); i++) {
		struct at at = page_spot(page, (struct spot){ i % levels->columns * levels->step,
			i / levels->columns * levels->step });

		if (at.x <= plan.right && at.y <= plan.bottom)
			draw_level(page, at, plain_inches(&page->report, levels->drops[i]));
		arena_clear(page->report.words);
	}
	page_lift(page);
}

/* ---- Strings --------------------------------------------------------------------------------- */

/* Its offset beyond the plan's right or lower edge. */
static void name_string(struct page *page, const struct setout_string *string)
{
	const struct type type = { .size = TYPE_LEAST, .is_upright = string->is_upright };
	const char *words = plain_length(&page->report,
		setout_rounded(string->at, page->report.units));
	nm half = type_width(words, type) / 2 + OFF_PLAN;
	struct box plan = page_plan(page);
	struct at at = page_spot(page, (struct spot){ string->at, string->at });
	struct at middle = string->is_upright ? (struct at){ at.x, plan.bottom + half } :
		(struct at){ plan.right + half, at.y };

	page->left_out[LEFT_STRINGS] += !page_try(page, words, middle, type);
}

static void number_points(struct page *page, const struct setout_string *string)
{
	struct setout_walk walk = setout_along(&page->setout, string);
	struct setout_point point;

	while (setout_next(&walk, &point) && !stop_asked()) {
		if (point.kind == SETOUT_CORNER)
			page->left_out[LEFT_POINTS] += !page_try_beside(page,
				say(&page->report, "%d", point.number), page_spot(page, point.at),
				CROSS / 4, (struct type){ .size = TYPE_LEAST });
		arena_clear(page->report.words);
	}
}

void survey_marks_strings(struct page *page)
{
	const struct setout *setout = &page->setout;

	page_pen(page, PEN_STRING);
	for (int i = 0; i < setout->string_count && !stop_asked(); i++)
		ink_line(page->report.out, page_spot(page, setout->strings[i].from),
			page_spot(page, setout->strings[i].to));
	page_lift(page);
}

void survey_marks_number(struct page *page)
{
	const struct setout *setout = &page->setout;

	page_pen(page, PEN_WORDS);
	for (int i = 0; i < setout->string_count && !stop_asked(); i++) {
		name_string(page, &setout->strings[i]);
		number_points(page, &setout->strings[i]);
	}
	page_lift(page);
}
