#include "report/svg/drip_marks.h"
#include "base/stop.h"

static const nm DOT = 4 * NM_PER_MM / 10; /* to its edge */

void drip_marks_emitter(const struct sheet *sheet, struct at at)
{
	ink_circle(sheet->report.out, at, DOT);
}

/* Of what is taped from the bed's corner. */
static struct at at_of(const struct sheet *sheet, const struct watered *bed, nm along, nm across)
{
	const struct survey *survey = &sheet->report.takeoff->survey;
	const struct region *region = &survey->regions[bed->region];
	bool is_upright = bed->drip.ground.is_upright;

	return sheet_spot(sheet, (struct spot){
		region->left * survey->cell + (is_upright ? across : along),
		region->first_cell.y * survey->cell + (is_upright ? along : across) });
}

static void draw_line(const struct sheet *sheet, const struct watered *bed,
	const struct drip_line *line)
{
	ink_line(sheet->report.out, at_of(sheet, bed, line->chord.from, line->across),
		at_of(sheet, bed, line->chord.to, line->across));
}

static void draw_emitters(const struct sheet *sheet, const struct watered *bed,
	const struct drip_line *line)
{
	nm from = line->chord.from;

	for (int64_t i = 0; i < line->emitters && !stop_asked(); i++)
		drip_marks_emitter(sheet, at_of(sheet, bed, from + drip_place(line->chord.to - from,
			line->emitters, i), line->across));
}

struct marking {
	struct sheet *sheet;
	const struct watered *bed;
};

/* A stretch of the header, if it has any length. */
static void draw_stretch(void *marking, struct bed_point from, struct bed_point to)
{
	const struct marking *m = marking;

	if (from.along != to.along || from.across != to.across)
		sheet_line(m->sheet, at_of(m->sheet, m->bed, from.along, from.across),
			at_of(m->sheet, m->bed, to.along, to.across));
}

/* All lines of all beds, by one of these. */
static void draw_all(struct sheet *sheet, enum pen pen, void (*draw)(const struct sheet *,
	const struct watered *, const struct drip_line *))
{
	const struct watering *watering = &sheet->report.takeoff->watering;

	sheet_pen(sheet, pen);
	for (int i = 0; i < watering->count && !stop_asked(); i++)
		for (int j = 0; j < watering->list[i].drip.count && !stop_asked(); j++)
			draw(sheet, &watering->list[i], &watering->list[i].drip.lines[j]);
	sheet_lift(sheet);
}

static void draw_header(struct sheet *sheet, const struct watering *watering)
{
	sheet_pen(sheet, PEN_HEADER);
	for (size_t i = 0; i < watering->legs.count && !stop_asked(); i++)
		sheet_line(sheet, sheet_point(sheet, watering->legs.items[i].from),
			sheet_point(sheet, watering->legs.items[i].to));
	for (int i = 0; i < watering->count && !stop_asked(); i++)
		if (watering->list[i].is_reached)
			bed_header_stretches(&watering->list[i].header, draw_stretch,
				&(struct marking){ sheet, &watering->list[i] });
	sheet_lift(sheet);
	sheet_pen(sheet, PEN_SLEEVE);
	for (int i = 0; i < watering->sleeve_count && !stop_asked(); i++)
		sheet_line(sheet, sheet_spot(sheet, watering->sleeves[i].from),
			sheet_spot(sheet, watering->sleeves[i].to));
	sheet_lift(sheet);
}

void drip_marks_draw(struct sheet *sheet)
{
	const struct watering *watering = &sheet->report.takeoff->watering;

	if (watering->count == 0)
		return;
	draw_all(sheet, PEN_DRIP, draw_line);
	draw_all(sheet, PEN_EMITTER, draw_emitters);
	if (watering->has_tap)
		draw_header(sheet, watering);
}
