#include "report/svg/dimensions.h"
#include "base/number.h"
#include "base/stop.h"
#include "report/svg/type.h"
#include "survey/outline.h"
#include "survey/shape.h"

#include <stdlib.h>

static const nm OFF_PLAN = 8 * NM_PER_MM, TICK = NM_PER_MM;
static const nm BESIDE = NM_PER_MM / 4; /* words from a face */

/* ---- One side -------------------------------------------------------------------------------- */

/* A side of a loop, and how a bed's sides are told. */
struct side_of {
	const struct loop *loop;
	int side;
};

struct told {
	nm depth; /* of its wall; 0: it has none */
	bool has_numbers, has_lengths;
};

/* Words on a side, in letters of that size. */
struct side_words {
	const char *words;
	nm size;
};

/* Beside the middle of a side, inwards of it by `off`, outwards where that is below 0; or, where
 * there is something else, farther along it. */
static bool try_side(struct sheet *sheet, struct side_words words, struct side_of of, nm off)
{
	static const int steps[] = { 0, -1, 1, -2, 2 };
	const struct loop *loop = of.loop;
	struct corner from = loop->corners[of.side];
	struct corner to = loop->corners[(of.side + 1) % loop->count];
	const struct type type = { .size = words.size, .is_upright = from.x == to.x };
	struct at a = sheet_point(sheet, (struct place){ from.x, from.y });
	struct at b = sheet_point(sheet, (struct place){ to.x, to.y });
	nm half = type_high(type.size) / 2 + BESIDE, by = off < 0 ? off - half : off + half;
	int right = sign(to.x - from.x), down = sign(to.y - from.y);
	struct at middle = { (a.x + b.x) / 2 - down * by, (a.y + b.y) / 2 + right * by };

	for (size_t i = 0; i < sizeof steps / sizeof *steps; i++)
		if (sheet_try(sheet, words.words, (struct at){
			middle.x + steps[i] * (b.x - a.x) / 6,
			middle.y + steps[i] * (b.y - a.y) / 6 }, type))
			return true;
	return false;
}

/* Whether words are no longer than the side. */
static bool is_as_long(const struct sheet *sheet, struct side_words words, struct side_of of)
{
	const struct survey *survey = &sheet->report.takeoff->survey;
	struct box box = sheet_words_box(words.words, (struct at){ 0, 0 },
		(struct type){ .size = words.size });

	return box_width(box) <= scaled(outline_side(of.loop, of.side) * survey->cell,
		sheet->layout->scale);
}

/* Within the bed, in small letters else in the least; else outside of it. */
static bool try_words(struct sheet *sheet, const char *words, const struct told *told,
	struct side_of of)
{
	const struct side_words small = { words, TYPE_SMALL }, tiny = { words, TYPE_LEAST };
	nm off = scaled(told->depth, sheet->layout->scale);

	return (is_as_long(sheet, small, of) && try_side(sheet, small, of, off)) ||
		(is_as_long(sheet, tiny, of) && (try_side(sheet, tiny, of, off) ||
		try_side(sheet, tiny, of, -BESIDE)));
}

static void draw_side(struct sheet *sheet, const struct told *told, struct side_of of)
{
	const struct report *report = &sheet->report;
	const char *number = say(report, "%d", of.side + 1);
	const char *length = plain_sides(report, outline_side(of.loop, of.side));
	bool is_all;

	if (told->has_numbers && told->has_lengths) {
		is_all = try_words(sheet, say(report, "%s: %s", number, length), told, of);
		if (!is_all)
			try_words(sheet, number, told, of);
	} else {
		is_all = try_words(sheet, told->has_numbers ? number : length, told, of);
	}
	sheet->left_out[LEFT_SIDES] += !is_all;
}

/* ---- All beds -------------------------------------------------------------------------------- */

static void draw_bed(struct sheet *sheet, int region, bool is_first)
{
	const struct takeoff *takeoff = sheet->report.takeoff;
	const struct wall *wall = walls_find(&takeoff->walls, region);
	struct told told = { .depth = wall ? wall->block.across : 0,
		.has_numbers = wall && wall->turn == TURN_NONE, .has_lengths = is_first };
	struct arena arena = ARENA_EMPTY;
	struct outline outline;

	if (!told.has_numbers && !told.has_lengths)
		return;
	outline_trace(&outline, &arena, sheet->report.plot, &takeoff->survey, region);
	for (int i = 0; i < outline.count && !stop_asked(); i++)
		for (int side = 0; side < outline.loops[i].count; side++) {
			draw_side(sheet, &told,
				(struct side_of){ &outline.loops[i], side });
			arena_clear(sheet->report.words);
		}
	arena_clear(&arena);
}

/* The beds, *count of them; to be freed. */
static struct shaped *beds_of(const struct survey *survey, int *count)
{
	struct shaped *beds = NULL;
	size_t capacity = 0;

	*count = 0;
	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		if (survey->regions[i].entry->class != CLASS_BED)
			continue;
		beds = memory_grow(beds, (size_t)*count, &capacity, sizeof *beds);
		beds[(*count)++] = (struct shaped){ i, 0 };
	}
	return beds;
}

void dimensions_draw(struct sheet *sheet)
{
	const struct survey *survey = &sheet->report.takeoff->survey;
	int count;
	struct shaped *beds = beds_of(survey, &count);
	struct groups shapes = shape_images(sheet->report.plot, survey, beds, count);

	sheet_pen(sheet, PEN_WORDS);
	for (int i = 0; i < count && !stop_asked(); i++)
		draw_bed(sheet, beds[i].region, shapes.list[shapes.of[i]].members[0] == i);
	sheet_lift(sheet);
	groups_fini(&shapes);
	free(beds);
}

/* ---- The plan -------------------------------------------------------------------------------- */

/* A line along, between two that go square to it. */
static void draw_dimension(struct sheet *sheet, struct at from, struct at to, const char *words)
{
	bool is_upright = from.x == to.x;
	struct at off = { is_upright ? TICK : 0, is_upright ? 0 : TICK };
	struct at middle = { (from.x + to.x) / 2, (from.y + to.y) / 2 };
	struct sink *out = sheet->report.out;

	sheet_pen(sheet, PEN_THIN);
	ink_line(out, from, to);
	ink_line(out, (struct at){ from.x - off.x, from.y - off.y },
		(struct at){ from.x + off.x, from.y + off.y });
	ink_line(out, (struct at){ to.x - off.x, to.y - off.y },
		(struct at){ to.x + off.x, to.y + off.y });
	sheet_lift(sheet);
	sheet_pen(sheet, PEN_WORDS);
	sheet_try(sheet, words, middle,
		(struct type){ .size = TYPE_USUAL, .is_upright = is_upright });
	sheet_lift(sheet);
}

void dimensions_draw_plan(struct sheet *sheet)
{
	const struct survey *survey = &sheet->report.takeoff->survey;
	struct box plan = sheet_plan(sheet);

	draw_dimension(sheet, (struct at){ plan.left, plan.top - OFF_PLAN },
		(struct at){ plan.right, plan.top - OFF_PLAN },
		plain_sides(&sheet->report, survey->columns));
	draw_dimension(sheet, (struct at){ plan.left - OFF_PLAN, plan.top },
		(struct at){ plan.left - OFF_PLAN, plan.bottom },
		plain_sides(&sheet->report, survey->rows));
}
