#include "report/svg/hatch.h"
#include "plot/mirror.h"

/* Lighter and darker soil, stone, turf and slate. */
static const char *const tints[CLASS_OPEN][HATCHES] = {
	[CLASS_BED] = { "#cfa77c", "#b98654", "#e6cba8", "#a8714f", "#dcb69a", "#c99a3f" },
	[CLASS_PATH] = { "#e4e4e1", "#cfcfcb", "#efe9d2", "#bcbcbc", "#d8dde2", "#c4bda9" },
	[CLASS_LAWN] = { "#a9d18e", "#86b96a", "#cfe5a4", "#6aa36f", "#b7dfc0", "#94c93d" },
	[CLASS_FIXTURE] = { "#9fb8d9", "#7396c4", "#c3d4ea", "#8f9fb5", "#a3c9d9", "#b4aedb" },
};

/* From one figure to the next. */
static const nm apart[HATCHES] = { 40 * NM_PER_MM / 10, 25 * NM_PER_MM / 10, 60 * NM_PER_MM / 10,
	32 * NM_PER_MM / 10, 50 * NM_PER_MM / 10, 19 * NM_PER_MM / 10 };

const char *hatch_tint(const struct entry *entry, int rank)
{
	return tints[entry->class][rank % HATCHES];
}

int hatch_rank(const struct sheet *sheet, const struct entry *entry)
{
	const struct areas *areas = &sheet->report.takeoff->areas;
	int rank = 0;

	for (int i = 0; i < areas->count && areas->list[i].entry != entry; i++)
		rank += areas->list[i].entry && areas->list[i].cells > 0 &&
			areas->list[i].entry->class == entry->class;
	return rank;
}

/* ---- Figures --------------------------------------------------------------------------------- */

static void line(struct sink *out, nm x1, nm y1, nm x2, nm y2)
{
	ink_line(out, (struct at){ x1, y1 }, (struct at){ x2, y2 });
}

/* Of soil: lines both ways aslant. */
static void draw_lattice(struct sink *out, nm side)
{
	line(out, 0, 0, side, side);
	line(out, 0, side, side, 0);
}

/* Of stone: dots, one at the middle and one at the corners. */
static void draw_dots(struct sink *out, nm side)
{
	nm radius = NM_PER_MM / 5;

	for (int i = 0; i < 4; i++)
		ink_circle(out, (struct at){ i % 2 * side, i / 2 * side }, radius);
	ink_circle(out, (struct at){ side / 2, side / 2 }, radius);
}

/* Of turf: short blades, set as those dots. */
static void draw_blades(struct sink *out, nm side)
{
	nm half = side / 6;

	for (int i = 0; i < 4; i++)
		line(out, i % 2 * side, i / 2 * side - half, i % 2 * side, i / 2 * side + half);
	line(out, side / 2, side / 2 - half, side / 2, side / 2 + half);
}

/* Of what is built: a grid. */
static void draw_grid(struct sink *out, nm side)
{
	line(out, 0, side / 2, side, side / 2);
	line(out, side / 2, 0, side / 2, side);
}

static void draw_figure(struct sink *out, enum plot_class class, nm side)
{
	switch (class) {
	case CLASS_BED:
		draw_lattice(out, side);
		break;
	case CLASS_PATH:
		draw_dots(out, side);
		break;
	case CLASS_LAWN:
		draw_blades(out, side);
		break;
	case CLASS_FIXTURE:
		draw_grid(out, side);
		break;
	case CLASS_OPEN:
	case CLASS_BOUNDARY:
		break;
	}
}

/* ---- Patterns -------------------------------------------------------------------------------- */

/* A tile of the entry's figure, moved and scaled as the attribute says. */
static void define(const struct sheet *sheet, const struct entry *entry, const char *where,
	const char *transform)
{
	struct sink *out = sheet->report.out;
	nm side = apart[hatch_rank(sheet, entry) % HATCHES];
	nm tile = entry->class == CLASS_FIXTURE ? side / 2 : side;

	sink_print(out, "<pattern id=\"%s-%c\" patternUnits=\"userSpaceOnUse\" width=\"", where,
		entry->letter);
	ink_length(out, tile);
	sink_add(out, "\" height=\"");
	ink_length(out, tile);
	sink_print(out, "\"%s>\n", transform);
	ink_open(out, entry->class == CLASS_PATH ? "fill=\"#000000\" stroke=\"none\"" :
		"fill=\"none\" stroke=\"#000000\" stroke-width=\"0.12\"");
	draw_figure(out, entry->class, tile);
	ink_close(out);
	sink_add(out, "</pattern>\n");
}

/* From cells to millimetres, beginning where the mirror's axes cross, else in the plan's middle. */
static const char *transform_words(const struct sheet *sheet)
{
	const struct mirror mirror = mirror_of(sheet->report.plot);
	nm cell = sheet->report.takeoff->survey.cell;
	struct text words = TEXT_EMPTY;
	int64_t per_mm = sheet->layout->scale * INT64_C(1000000) * NM_PER_MM / cell;

	text_print(&words, " patternTransform=\"translate(");
	text_add_decimal(&words, INT64_C(5) * mirror.across, 1);
	text_add(&words, " ");
	text_add_decimal(&words, INT64_C(5) * mirror.down, 1);
	text_add(&words, ") scale(");
	text_add_decimal(&words, per_mm, 6);
	text_add(&words, ")\"");
	return say_text(&sheet->report, &words);
}

void hatch_define(const struct sheet *sheet)
{
	const struct areas *areas = &sheet->report.takeoff->areas;

	for (int i = 0; i < areas->count; i++) {
		if (!areas->list[i].entry || areas->list[i].cells == 0)
			continue;
		if (sheet->layout->sheet == 1)
			define(sheet, areas->list[i].entry, "on", transform_words(sheet));
		define(sheet, areas->list[i].entry, "as", "");
		arena_clear(sheet->report.words);
	}
}
