#include "report/svg/svg.h"
#include "base/stop.h"
#include "report/svg/around.h"
#include "report/svg/dimensions.h"
#include "report/svg/fence_marks.h"
#include "report/svg/ground.h"
#include "report/svg/hatch.h"
#include "report/svg/names.h"
#include "report/svg/plant_marks.h"
#include "report/svg/remarks.h"
#include "report/svg/sunlight.h"
#include "report/svg/survey_marks.h"
#include "report/svg/title_block.h"
#include "report/words/first_line.h"
#include "report/words/sun_words.h"

#include <stdlib.h>

/* ---- Begin and end --------------------------------------------------------------------------- */

/* "210mm", "8.5in". */
static void add_size(struct sink *out, const char *name, nm length, enum units units)
{
	struct text words = TEXT_EMPTY;

	if (units == UNITS_METRIC)
		text_add_decimal(&words, length / NM_PER_MM, 0);
	else
		text_add_decimal(&words, length * 10 / NM_PER_INCH, 1);
	sink_print(out, " %s=\"%s%s\"", name, words.bytes, units == UNITS_METRIC ? "mm" : "in");
	text_fini(&words);
}

static void begin(const struct sheet *sheet)
{
	const struct layout *layout = sheet->layout;
	struct sink *out = sheet->report.out;
	enum units units = papers[layout->paper].units;
	const struct value *title = block_value(&sheet->report.plot->details.head, HEAD_TITLE);

	sink_print(out, "%s%d -->\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\"",
		FIRST_LINE_DRAWING, FIRST_LINE_VERSION);
	add_size(out, "width", layout->width, units);
	add_size(out, "height", layout->height, units);
	sink_add(out, " viewBox=\"0 0 ");
	ink_length(out, layout->width);
	sink_add(out, " ");
	ink_length(out, layout->height);
	sink_add(out, "\" font-family=\"sans-serif\">\n<title>");
	ink_escaped(out, title->set ? title->as.text : sheet->report.file);
	sink_add(out, "</title>\n<defs>\n");
	hatch_define(sheet);
	if (sheet->asked->with & DRAW_SUN)
		sunlight_define(sheet);
	sink_add(out, "<clipPath id=\"field\">\n");
	ink_box(out, layout->field);
	sink_add(out, "</clipPath>\n</defs>\n");
	ink_open(out, "fill=\"#ffffff\" stroke=\"none\"");
	ink_box(out, (struct box){ 0, 0, layout->width, layout->height });
	ink_close(out);
}

static void set_out(struct sheet *sheet)
{
	const struct takeoff *takeoff = sheet->report.takeoff;

	if (sheet->asked->with & DRAW_STRINGS)
		setout_make(&sheet->setout, sheet->arena, &takeoff->plot, &takeoff->survey,
			&takeoff->fences);
}

/* ---- Layers ---------------------------------------------------------------------------------- */

static void draw_lines(struct sheet *sheet)
{
	around_draw_houses(sheet);
	ground_draw(sheet);
	fence_marks_draw(sheet);
	plant_marks_draw(sheet);
	around_draw(sheet);
	if (sheet->asked->with & DRAW_STRINGS)
		survey_marks_strings(sheet);
}

/* In the order in which they are most missed. */
static void draw_words(struct sheet *sheet)
{
	dimensions_draw_plan(sheet);
	fence_marks_name_gates(sheet);
	around_write_names(sheet);
	names_draw(sheet);
	plant_marks_name(sheet);
	if (sheet->asked->with & DRAW_LEVELS)
		survey_marks_levels(sheet);
	if (sheet->asked->with & DRAW_STRINGS)
		survey_marks_number(sheet);
	else
		dimensions_draw(sheet);
	fence_marks_number(sheet);
}

static void draw_remarks(struct sheet *sheet, const struct remarks *remarks)
{
	const struct layout *layout = sheet->layout;
	struct at *places = memory_new((size_t)remarks->count, sizeof *places);

	layout_places(layout, remarks, places);
	for (int i = layout->first; i < layout->beyond && !stop_asked(); i++) {
		remarks->list[i].draw(sheet, places[i - layout->first], &remarks->list[i]);
		arena_clear(sheet->report.words);
	}
	free(places);
}

/* ---- The whole ------------------------------------------------------------------------------- */

/* What a drawing is made with. */
struct drawn {
	struct arena arena, words;
	struct remarks remarks;
	struct report report;
	struct layout layout;
};

static bool prepare(struct drawn *drawn, const struct plot *plot, const struct takeoff *takeoff,
	const struct svg_asked *asked, struct text *why)
{
	*drawn = (struct drawn){ .arena = ARENA_EMPTY, .words = ARENA_EMPTY };
	if ((asked->with & DRAW_SUN) && !sun_has_site(takeoff)) {
		text_add(why, sun_missing_words());
		return false;
	}
	drawn->report = (struct report){ .words = &drawn->words, .plot = plot, .takeoff = takeoff,
		.units = plot_units(plot), .wording = WORDING_TEXT };
	remarks_make(&drawn->remarks, &drawn->arena, &drawn->report, asked);
	return layout_find(&drawn->layout, asked, &drawn->report, &drawn->remarks, why);
}

static void finish(struct drawn *drawn)
{
	arena_clear(&drawn->words);
	arena_clear(&drawn->arena);
}

bool svg_fits(const struct plot *plot, const struct takeoff *takeoff, const struct svg_asked *asked,
	struct text *why)
{
	struct drawn drawn;
	bool is_good = prepare(&drawn, plot, takeoff, asked, why);

	finish(&drawn);
	return is_good;
}

int svg_sheets(const struct plot *plot, const struct takeoff *takeoff,
	const struct svg_asked *asked)
{
	struct text why = TEXT_EMPTY;
	struct drawn drawn;
	int sheets;

	prepare(&drawn, plot, takeoff, asked, &why);
	sheets = drawn.layout.sheets;
	text_fini(&why);
	finish(&drawn);
	return sheets;
}

void report_svg(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name, const struct svg_asked *asked)
{
	struct text why = TEXT_EMPTY;
	struct drawn drawn;

	if (prepare(&drawn, plot, takeoff, asked, &why)) {
		struct sheet sheet = { .report = drawn.report, .arena = &drawn.arena,
			.asked = asked, .layout = &drawn.layout };

		sheet.report.out = out;
		sheet.report.file = name;
		sheet.room = room_of(drawn.layout.field, &drawn.arena);
		begin(&sheet);
		if (drawn.layout.sheet == 1) {
			set_out(&sheet);
			draw_lines(&sheet);
			draw_words(&sheet);
		}
		draw_remarks(&sheet, &drawn.remarks);
		title_block_draw(&sheet);
		sink_add(out, "</svg>\n");
	}
	text_fini(&why);
	finish(&drawn);
}
