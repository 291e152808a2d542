#include "report/svg/svg.h"
#include "base/stop.h"
#include "report/svg/around.h"
#include "report/svg/fences.h"
#include "report/svg/ground.h"
#include "report/svg/hatch.h"
#include "report/svg/names.h"
#include "report/svg/remarks.h"
#include "report/svg/sides.h"
#include "report/svg/survey_marks.h"
#include "report/svg/title.h"
#include "report/words/first_line.h"

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

static void begin(const struct page *page)
{
	const struct layout *layout = page->layout;
	struct sink *out = page->report.out;
	enum units units = papers[layout->paper].units;
	const struct value *title = block_value(&page->report.plot->details.head, HEAD_TITLE);

	sink_print(out, "%s%d -->\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\"",
		FIRST_LINE_DRAWING, FIRST_LINE_VERSION);
	add_size(out, "width", layout->width, units);
	add_size(out, "height", layout->height, units);
	sink_add(out, " viewBox=\"0 0 ");
	ink_length(out, layout->width);
	sink_add(out, " ");
	ink_length(out, layout->height);
	sink_add(out, "\" font-family=\"sans-serif\">\n<title>");
	ink_escaped(out, title->set ? title->as.text : page->report.file);
	sink_add(out, "</title>\n<defs>\n");
	hatch_define(page);
	sink_add(out, "<clipPath id=\"field\">\n");
	ink_box(out, layout->field);
	sink_add(out, "</clipPath>\n</defs>\n");
	ink_open(out, "fill=\"#ffffff\" stroke=\"none\"");
	ink_box(out, (struct box){ 0, 0, layout->width, layout->height });
	ink_close(out);
}

static void set_out(struct page *page)
{
	const struct takeoff *takeoff = page->report.takeoff;

	if (page->asked->with & DRAW_STRINGS)
		setout_make(&page->setout, page->arena, &takeoff->plot, &takeoff->survey,
			&takeoff->fences);
}

/* ---- Layers ---------------------------------------------------------------------------------- */

static void draw_lines(struct page *page)
{
	around_draw_houses(page);
	ground_draw(page);
	fences_draw(page);
	around_draw(page);
	if (page->asked->with & DRAW_STRINGS)
		survey_marks_strings(page);
}

/* In the order in which they are most missed. */
static void draw_words(struct page *page)
{
	sides_draw_plan(page);
	fences_name_gates(page);
	around_name(page);
	names_draw(page);
	if (page->asked->with & DRAW_LEVELS)
		survey_marks_levels(page);
	if (page->asked->with & DRAW_STRINGS)
		survey_marks_number(page);
	else
		sides_draw(page);
	fences_number(page);
}

static void draw_remarks(struct page *page, const struct remarks *remarks)
{
	const struct layout *layout = page->layout;
	struct at *places = memory_new((size_t)remarks->count, sizeof *places);

	layout_places(layout, remarks, places);
	for (int i = layout->first; i < layout->beyond && !stop_asked(); i++) {
		remarks->list[i].draw(page, places[i - layout->first], &remarks->list[i]);
		arena_clear(page->report.words);
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

int svg_sheets(const struct plot *plot, const struct takeoff *takeoff, const struct svg_asked *asked)
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
		struct page page = { .report = drawn.report, .arena = &drawn.arena, .asked = asked,
			.layout = &drawn.layout };

		page.report.out = out;
		page.report.file = name;
		page.room = room_of(drawn.layout.field, &drawn.arena);
		begin(&page);
		if (drawn.layout.sheet == 1) {
			set_out(&page);
			draw_lines(&page);
			draw_words(&page);
		}
		draw_remarks(&page, &drawn.remarks);
		title_draw(&page);
		sink_add(out, "</svg>\n");
	}
	text_fini(&why);
	finish(&drawn);
}
