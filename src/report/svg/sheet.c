#include "report/svg/sheet.h"
#include "base/number.h"
#include "report/svg/type.h"

const nm TYPE_LARGE = 32 * NM_PER_MM / 10, TYPE_USUAL = 25 * NM_PER_MM / 10;
const nm TYPE_SMALL = 20 * NM_PER_MM / 10, TYPE_LEAST = 16 * NM_PER_MM / 10;

const nm ROUND_LINE = NM_PER_MM / 2;
static const nm ROUND_WORDS = NM_PER_MM / 4;

/* ---- Pens ------------------------------------------------------------------------------------ */

#define LINE(colour, width) "fill=\"none\" stroke=\"" colour "\" stroke-width=\"" width "\""
#define DASHED(colour, width, dashes) LINE(colour, width) " stroke-dasharray=\"" dashes "\""
#define FILLED(fill, colour, width) "fill=\"" fill "\" stroke=\"" colour "\" stroke-width=\"" \
	width "\""
#define INK(colour) "fill=\"" colour "\" stroke=\"none\""
#define BLACK "#000000"
#define WHITE "#ffffff"

/* Plain, then in colour. Of services by the uniform colours of American Public Works Association
 * for marking (from memory: water blue, gas yellow, here dark enough for white paper, power red,
 * telecom orange, drains green). */
static const char *const pens[PENS][2] = {
	[PEN_FRAME] = { LINE(BLACK, "0.35"), LINE(BLACK, "0.35") },
	[PEN_THIN] = { LINE(BLACK, "0.15"), LINE(BLACK, "0.15") },
	[PEN_FENCE] = { LINE(BLACK, "0.6"), LINE("#6b3e1d", "0.7") },
	[PEN_GATE] = { DASHED(BLACK, "0.25", "1,0.7"), DASHED("#6b3e1d", "0.25", "1,0.7") },
	[PEN_POST] = { FILLED(BLACK, WHITE, "0.1"), FILLED("#4a2810", WHITE, "0.1") },
	[PEN_WATER] = { LINE(BLACK, "0.5"), LINE("#0b4fb3", "0.6") },
	[PEN_GAS] = { LINE(BLACK, "0.5"), LINE("#a88600", "0.6") },
	[PEN_POWER] = { LINE(BLACK, "0.5"), LINE("#c8102e", "0.6") },
	[PEN_TELECOM] = { LINE(BLACK, "0.5"), LINE("#d95f02", "0.6") },
	[PEN_DRAIN] = { LINE(BLACK, "0.5"), LINE("#1b7837", "0.6") },
	[PEN_OTHER] = { LINE(BLACK, "0.5"), LINE("#6a3d9a", "0.6") },
	[PEN_TAP] = { FILLED(WHITE, BLACK, "0.5"), FILLED(WHITE, "#0b4fb3", "0.5") },
	[PEN_HEADER] = { DASHED(BLACK, "0.35", "0.8,0.8"), DASHED("#0b4fb3", "0.4", "0.8,0.8") },
	[PEN_SLEEVE] = { LINE(BLACK, "0.9"), LINE("#0b4fb3", "0.9") },
	[PEN_DRIP] = { LINE(BLACK, "0.2"), LINE("#0b4fb3", "0.25") },
	[PEN_EMITTER] = { FILLED(BLACK, "none", "0"), FILLED("#0b4fb3", "none", "0") },
	[PEN_HOUSE] = { FILLED("#cccccc", BLACK, "0.6"), FILLED("#d9c7bd", BLACK, "0.6") },
	[PEN_SHADE] = { DASHED(BLACK, "0.4", "0.5,0.9"), DASHED("#00602b", "0.5", "0.5,0.9") },
	[PEN_KEEP] = { DASHED(BLACK, "0.4", "2,0.8,0.4,0.8"),
		DASHED("#00602b", "0.5", "2,0.8,0.4,0.8") },
	[PEN_DROP] = { FILLED(BLACK, WHITE, "0.2"), FILLED("#7a1fa2", WHITE, "0.2") },
	[PEN_TIE] = { FILLED(WHITE, BLACK, "0.3"), FILLED(WHITE, "#7a1fa2", "0.3") },
	[PEN_LEVEL] = { LINE(BLACK, "0.2"), LINE("#00497a", "0.25") },
	[PEN_STRING] = { DASHED(BLACK, "0.15", "4,0.8"), DASHED("#c2185b", "0.2", "4,0.8") },
	[PEN_PLANT] = { DASHED(BLACK, "0.15", "0.8,0.4"), DASHED("#2e7d32", "0.2", "0.8,0.4") },
	[PEN_EARTH] = { FILLED("#e2e2e2", "none", "0"), FILLED("#d2b48c", "none", "0") },
	[PEN_SOIL] = { FILLED(WHITE, BLACK, "0.15"), FILLED("#a9793f", BLACK, "0.15") },
	[PEN_MULCH] = { FILLED("#999999", BLACK, "0.15"), FILLED("#6b3e1d", BLACK, "0.15") },
	[PEN_STONE] = { FILLED("#bdbdbd", BLACK, "0.2"), FILLED("#b8b8b8", BLACK, "0.2") },
	[PEN_SOLID] = { FILLED(WHITE, BLACK, "0.3"), FILLED("#efe7da", BLACK, "0.3") },
	[PEN_WORDS] = { INK(BLACK), INK(BLACK) },
};

void sheet_pen(const struct sheet *sheet, enum pen pen)
{
	ink_open(sheet->report.out, "%s", pens[pen][!sheet->asked->is_plain]);
}

void sheet_lift(const struct sheet *sheet)
{
	ink_close(sheet->report.out);
}

/* ---- Places ---------------------------------------------------------------------------------- */

struct at sheet_spot(const struct sheet *sheet, struct spot spot)
{
	const struct layout *layout = sheet->layout;

	return (struct at){ layout->datum.x + scaled(spot.x, layout->scale),
		layout->datum.y + scaled(spot.y, layout->scale) };
}

struct at sheet_point(const struct sheet *sheet, struct place point)
{
	nm cell = sheet->report.takeoff->survey.cell;

	return sheet_spot(sheet, (struct spot){ point.x * cell, point.y * cell });
}

struct box sheet_plan(const struct sheet *sheet)
{
	const struct survey *survey = &sheet->report.takeoff->survey;
	struct at far = sheet_point(sheet, (struct place){ survey->columns, survey->rows });

	return (struct box){ sheet->layout->datum.x, sheet->layout->datum.y, far.x, far.y };
}

/* ---- Words ----------------------------------------------------------------------------------- */

void sheet_line(struct sheet *sheet, struct at a, struct at b)
{
	struct box box = { nm_least(a.x, b.x), nm_least(a.y, b.y), nm_most(a.x, b.x),
		nm_most(a.y, b.y) };

	ink_line(sheet->report.out, a, b);
	room_take(&sheet->room, box_grown(box, ROUND_LINE));
}

struct box sheet_words_box(const char *words, struct at middle, struct type type)
{
	nm along = type_width(words, type) + ROUND_WORDS, high = type_high(type.size);

	return type.is_upright ? box_around(middle, high, along) :
		box_around(middle, along, high);
}

bool sheet_try(struct sheet *sheet, const char *words, struct at middle, struct type type)
{
	struct box box = sheet_words_box(words, middle, type);
	struct sink *out = sheet->report.out;

	if (!room_is_free(&sheet->room, box))
		return false;
	room_take(&sheet->room, box);
	type.anchor = ANCHOR_MIDDLE;
	ink_open(out, "fill=\"" WHITE "\" fill-opacity=\"0.85\"");
	ink_box(out, box_grown(box, -ROUND_WORDS / 2));
	ink_close(out);
	ink_words(out, middle, type, words);
	return true;
}

bool sheet_try_beside(struct sheet *sheet, const char *words, struct at point, nm off,
	struct type type)
{
	static const struct place ways[] = { { 1, -1 }, { -1, -1 }, { 1, 1 }, { -1, 1 }, { 0, -1 },
		{ 1, 0 }, { 0, 1 }, { -1, 0 } };
	struct box box = sheet_words_box(words, point, type);
	nm across = box_width(box) / 2 + off, down = box_height(box) / 2 + off;

	for (size_t i = 0; i < sizeof ways / sizeof *ways; i++)
		if (sheet_try(sheet, words, (struct at){ point.x + ways[i].x * across,
			point.y + ways[i].y * down }, type))
			return true;
	return false;
}
