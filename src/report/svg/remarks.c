#include "report/svg/remarks.h"
#include "base/number.h"
#include "report/drawing/scale.h"
#include "report/svg/section.h"
#include "report/svg/signs.h"
#include "report/svg/type.h"
#include "report/words/sun_words.h"

static const nm WIDE = COLUMN_WIDTH * NM_PER_MM, BELOW = NM_PER_MM;
static const nm BAR_MOST = 52 * NM_PER_MM, BAR_HIGH = 3 * NM_PER_MM / 2;
enum { LEFT_OUT_LINES = 4, BAR_PARTS = 4 };

/* ---- Gathering ------------------------------------------------------------------------------- */

static void break_lines(struct remark *remark, struct arena *arena, nm width, const char *words)
{
	const char **lines = NULL, *line;
	size_t count = 0, capacity = 0;

	while ((line = type_line(&words, TYPE_USUAL, width, arena)) != NULL) {
		lines = arena_grow(arena, lines, count, &capacity, sizeof *lines);
		lines[count++] = line;
	}
	remark->lines = lines;
	remark->line_count = (int)count;
}

struct remark *remark_add(struct remark_list *list, nm height, nm width, const char *words)
{
	struct remark *remark;

	list->items = arena_grow(list->arena, list->items, list->count, &list->capacity,
		sizeof *list->items);
	remark = &list->items[list->count++];
	*remark = (struct remark){ .leads = false };
	break_lines(remark, list->arena, width, words);
	remark->height = nm_most(height, remark->line_count * type_high(TYPE_USUAL)) + BELOW;
	return remark;
}

void remark_words(struct sheet *sheet, struct at at, const struct remark *remark)
{
	sheet_pen(sheet, PEN_WORDS);
	for (int i = 0; i < remark->line_count; i++)
		ink_words(sheet->report.out, (struct at){ at.x, at.y + type_high(TYPE_USUAL) / 2 +
			i * type_high(TYPE_USUAL) }, (struct type){ .size = TYPE_USUAL },
			remark->lines[i]);
	sheet_lift(sheet);
}

/* ---- Headings and paragraphs ----------------------------------------------------------------- */

static void draw_heading(struct sheet *sheet, struct at at, const struct remark *remark)
{
	sheet_pen(sheet, PEN_WORDS);
	ink_words(sheet->report.out, (struct at){ at.x, at.y + remark->height / 2 },
		(struct type){ .size = TYPE_LARGE, .is_bold = true }, remark->lines[0]);
	sheet_lift(sheet);
}

static void add_heading(struct remark_list *list, const char *words)
{
	struct remark *remark = remark_add(list, 5 * NM_PER_MM, WIDE, words);

	remark->leads = true;
	remark->draw = draw_heading;
}

void remark_paragraph(struct remark_list *list, const char *words)
{
	remark_add(list, 0, WIDE, words)->draw = remark_words;
}

/* ---- Scale and north ------------------------------------------------------------------------- */

static nm bar_unit(enum units units)
{
	return units == UNITS_METRIC ? NM_PER_M / 10 : NM_PER_FOOT;
}

/* The longest bar of 1, 2, 5, 10 ... feet, or tenths of a metre, that has room. */
static nm bar_length(const struct sheet *sheet)
{
	static const int factors[] = { 1, 2, 5 };
	nm longest = bar_unit(sheet->report.units);

	for (nm ten = longest;; ten *= 10)
		for (int i = 0; i < 3; i++) {
			if (scaled(factors[i] * ten, sheet->layout->scale) > BAR_MOST)
				return longest;
			longest = factors[i] * ten;
		}
}

static void draw_bar(struct sheet *sheet, struct at at, const struct remark *remark)
{
	const struct report *report = &sheet->report;
	nm length = bar_length(sheet), wide = scaled(length, sheet->layout->scale);
	struct text scale = TEXT_EMPTY;
	nm top = at.y + 8 * NM_PER_MM;
	struct box bar = { at.x, top, at.x + wide, top + BAR_HIGH };
	struct at label = { bar.left, bar.top - 2 * NM_PER_MM };

	scale_write(&scale, sheet->layout->scale, report->units);
	sheet_pen(sheet, PEN_WORDS);
	ink_words(report->out, (struct at){ at.x, at.y + 2 * NM_PER_MM },
		(struct type){ .size = TYPE_LARGE, .is_bold = true },
		say(report, "Scale %s", scale.bytes));
	text_fini(&scale);
	ink_words(report->out, label, (struct type){ .size = TYPE_USUAL }, "0");
	label.x = bar.right;
	ink_words(report->out, label, (struct type){ .size = TYPE_USUAL, .anchor = ANCHOR_END },
		plain_length(report, length));
	for (int i = 0; i < BAR_PARTS; i += 2)
		ink_box(report->out, (struct box){ bar.left + i * wide / BAR_PARTS, bar.top,
			bar.left + (i + 1) * wide / BAR_PARTS, bar.bottom });
	sheet_lift(sheet);
	ink_open(report->out, "id=\"bar\" fill=\"none\" stroke=\"#000000\" stroke-width=\"0.2\"");
	ink_box(report->out, bar);
	ink_close(report->out);
	at.y = bar.bottom + BELOW;
	remark_words(sheet, at, &(struct remark){ .line_count = 2, .lines = (const char *const[]){
		"Print at 100 %. Check with a rule:", say(report, "this bar is %s long on paper.",
		plain_piece(report, wide)) } });
	(void)remark;
}

static void draw_north(struct sheet *sheet, struct at at, const struct remark *remark)
{
	const struct value *north = block_value(&sheet->report.plot->details.head, HEAD_NORTH);
	struct at middle = { at.x + 7 * NM_PER_MM, at.y + 7 * NM_PER_MM };
	nm long_way = 6 * NM_PER_MM, short_way = 2 * NM_PER_MM;
	const struct at arrow[] = { { middle.x, middle.y - long_way },
		{ middle.x + short_way, middle.y + long_way },
		{ middle.x, middle.y + long_way / 2 },
		{ middle.x - short_way, middle.y + long_way } };
	struct text turn = TEXT_EMPTY;

	text_add_decimal(&turn, -north->as.number, 6);
	text_add(&turn, " ");
	text_add_decimal(&turn, middle.x / 100, 4);
	text_add(&turn, " ");
	text_add_decimal(&turn, middle.y / 100, 4);
	ink_open(sheet->report.out, "id=\"north\" transform=\"rotate(%s)\" fill=\"#000000\"",
		turn.bytes);
	ink_points(sheet->report.out, arrow, 4, true);
	ink_close(sheet->report.out);
	text_fini(&turn);
	at.x += 16 * NM_PER_MM;
	at.y = middle.y - type_high(TYPE_USUAL) / 2;
	remark_words(sheet, at, remark);
}

static void add_scale(struct remark_list *list, const struct report *report)
{
	const char *north = north_words(report);

	remark_add(list, 18 * NM_PER_MM, WIDE, "")->draw = draw_bar;
	if (*north)
		remark_add(list, 14 * NM_PER_MM, WIDE - 16 * NM_PER_MM, north)->draw = draw_north;
	else
		remark_paragraph(list, "Where north is the plot does not say.");
	if (sun_has_site(report->takeoff))
		remark_paragraph(list, say(report, "Latitude %s.", sun_latitude_words(report,
			sun_latitude(report->takeoff))));
}

/* ---- What has no room ------------------------------------------------------------------------ */

static void draw_left_out(struct sheet *sheet, struct at at, const struct remark *remark)
{
	static const char *const what[LEFT_KINDS][2] = {
		[LEFT_IDS] = { "name of a region", "names of regions" },
		[LEFT_SIDES] = { "side of a bed", "sides of beds" },
		[LEFT_GATES] = { "gate", "gates" }, [LEFT_POSTS] = { "post", "posts" },
		[LEFT_SERVICES] = { "service", "services" },
		[LEFT_AROUND] = { "thing around", "things around" },
		[LEFT_DROPS] = { "level", "levels" }, [LEFT_POINTS] = { "point", "points" },
		[LEFT_STRINGS] = { "string", "strings" }, [LEFT_PLANTS] = { "plant", "plants" },
	};
	const struct report *report = &sheet->report;
	struct text words = TEXT_EMPTY;
	struct remark said = { .leads = false };

	for (int i = 0; i < LEFT_KINDS; i++)
		if (sheet->left_out[i] > 0)
			text_print(&words, "%s%s", words.length ? ", " : "No room for words on: ",
				untied(report, word_count(report, sheet->left_out[i], what[i][0],
				what[i][1])));
	if (words.length > 0) {
		break_lines(&said, sheet->arena, WIDE, words.bytes);
		said.line_count = least(said.line_count, LEFT_OUT_LINES);
		remark_words(sheet, at, &said);
	}
	text_fini(&words);
	(void)remark;
}

/* ---- All of them ----------------------------------------------------------------------------- */

void remarks_make(struct remarks *out, struct arena *arena, const struct report *report,
	const struct svg_asked *asked)
{
	struct remark_list list = { .arena = arena };
	int needed;

	add_scale(&list, report);
	add_heading(&list, "Ground");
	signs_add_ground(&list, report);
	add_heading(&list, "Signs");
	signs_add(&list, report, asked);
	list.count -= list.items[list.count - 1].leads; /* nothing is under it */
	remark_add(&list, LEFT_OUT_LINES * type_high(TYPE_USUAL), WIDE, "")->draw = draw_left_out;
	needed = (int)list.count;
	sections_add(&list, report);
	*out = (struct remarks){ list.items, (int)list.count, needed };
}
