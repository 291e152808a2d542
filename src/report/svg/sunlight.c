#include "report/svg/sunlight.h"
#include "base/stop.h"
#include "report/words/sun_words.h"
#include "takeoff/sun/sun_usual.h"

/* From one line to the next; full sun has none, shade lines both ways. */
static const nm apart[SUN_CLASSES] = { [SUN_PART] = 4 * NM_PER_MM, [SUN_PART_SHADE] = 2 * NM_PER_MM,
	[SUN_SHADE] = 14 * NM_PER_MM / 10 };

static void define(struct sink *out, enum sun_class class)
{
	nm side = apart[class], half = side / 2;

	sink_print(out, "<pattern id=\"sun-%d\" patternUnits=\"userSpaceOnUse\" width=\"", class);
	ink_length(out, side);
	sink_add(out, "\" height=\"");
	ink_length(out, side);
	sink_add(out, "\" patternTransform=\"rotate(45)\">\n");
	ink_open(out, "fill=\"none\" stroke=\"#000000\" stroke-width=\"0.18\"");
	ink_line(out, (struct at){ half, 0 }, (struct at){ half, side });
	if (class == SUN_SHADE)
		ink_line(out, (struct at){ 0, half }, (struct at){ side, half });
	ink_close(out);
	sink_add(out, "</pattern>\n");
}

void sunlight_define(const struct sheet *sheet)
{
	for (enum sun_class class = SUN_PART; class <= SUN_SHADE; class++)
		define(sheet->report.out, class);
}

static void add_at(struct sink *out, char command, nm length)
{
	sink_print(out, "%c", command);
	ink_length(out, length);
}

/* Cells left..end-1 of a row. */
static void add_run(const struct sheet *sheet, int left, int end, int y)
{
	struct at from = sheet_point(sheet, (struct place){ left, y });
	struct at to = sheet_point(sheet, (struct place){ end, y + 1 });
	struct sink *out = sheet->report.out;

	add_at(out, 'M', from.x);
	add_at(out, ' ', from.y);
	add_at(out, 'H', to.x);
	add_at(out, 'V', to.y);
	add_at(out, 'H', from.x);
	sink_add(out, "Z");
}

/* Whether a cell, which may lie one past the last, is of a class. */
static bool is_of(const struct sheet *sheet, const struct sun_usual *sun, int x, int y,
	enum sun_class class)
{
	const struct takeoff *takeoff = sheet->report.takeoff;
	size_t columns = (size_t)takeoff->survey.columns, at = (size_t)y * columns + (size_t)x;

	return (size_t)x < columns && sun->steps[at] != SUN_NO_STEPS &&
		sun_class_of(takeoff, sun_usual_mean(sun->steps[at])) == class;
}

static void draw_class(const struct sheet *sheet, const struct sun_usual *sun, enum sun_class class)
{
	const struct survey *survey = &sheet->report.takeoff->survey;
	struct sink *out = sheet->report.out;

	sink_print(out, "<path id=\"%s\" fill=\"url(#sun-%d)\" stroke=\"none\" d=\"",
		sun_class_words[class].key, class);
	for (int y = 0; y < survey->rows && !stop_asked(); y++) {
		int left = 0;

		for (int x = 0; x <= survey->columns; x++) {
			if (is_of(sheet, sun, x, y, class))
				continue;
			if (left < x)
				add_run(sheet, left, x, y);
			left = x + 1;
		}
	}
	sink_add(out, "\"/>\n");
}

void sunlight_draw(struct sheet *sheet)
{
	const struct sun_usual *sun = sun_usual(sheet->report.takeoff, sheet->arena);

	for (enum sun_class class = SUN_PART; sun && class <= SUN_SHADE; class++)
		if (sun->class_cells[class] > 0)
			draw_class(sheet, sun, class);
}

void sunlight_sign(const struct sheet *sheet, struct box box, int class)
{
	if (class == SUN_FULL)
		ink_open(sheet->report.out, "fill=\"#ffffff\" stroke=\"#000000\" "
			"stroke-width=\"0.2\"");
	else
		ink_open(sheet->report.out, "fill=\"url(#sun-%d)\" stroke=\"#000000\" "
			"stroke-width=\"0.2\"", class);
	ink_box(sheet->report.out, box);
	ink_close(sheet->report.out);
}

const char *sunlight_words(const struct report *report)
{
	const char *untold = sun_untold_words(report);

	return say(report, "Hours of sun in the mean of days from %s, under a clear sky, on level "
		"ground.%s%s %s", sun_latitude(report->takeoff) < 0 ? "21 September to 21 March" :
		"21 March to 21 September", untold ? " " : "", untold ? untold : "",
		sun_source_words(report));
}

bool sunlight_spares(const struct svg_asked *asked, enum plot_class class)
{
	return !(asked->with & DRAW_SUN) || class == CLASS_FIXTURE;
}
