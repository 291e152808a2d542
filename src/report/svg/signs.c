#include "report/svg/signs.h"
#include "base/stop.h"
#include "report/drawing/finished.h"
#include "report/svg/around.h"
#include "report/svg/beyond.h"
#include "report/svg/drip_marks.h"
#include "report/svg/hatch.h"
#include "report/svg/plant_marks.h"
#include "report/svg/sunlight.h"
#include "report/svg/survey_marks.h"
#include "report/words/figures.h"
#include "report/words/sun_words.h"
#include "survey/surface.h"

#include <stdlib.h>

static const nm WIDE = COLUMN_WIDTH * NM_PER_MM;
static const nm SIGN_WIDE = 9 * NM_PER_MM, SIGN_HIGH = 4 * NM_PER_MM, TO_WORDS = 11 * NM_PER_MM;

/* ---- Regions in words ------------------------------------------------------------------------ */

enum { RANGES_MOST = 8 };

static void end_range(struct region_words *list)
{
	if (list->first == 0)
		return;
	text_print(&list->words, "%s%c%d", list->words.length ? ", " : "", list->class,
		list->first);
	if (list->last > list->first)
		text_print(&list->words, "%s%c%d", list->last > list->first + 1 ? " to " : ", ",
			list->class, list->last);
	list->ranges++;
	list->first = 0;
}

void region_words_add(struct region_words *list, const struct region *region)
{
	char name[REGION_NAME_MOST];

	survey_region_name(region, name);
	list->class = name[0];
	if (list->first > 0 && list->last + 1 == region->number) {
		list->last++;
		return;
	}
	end_range(list);
	if (list->ranges == RANGES_MOST)
		list->more++;
	else
		list->first = list->last = region->number;
}

const char *region_words_end(struct region_words *list, const struct report *report)
{
	end_range(list);
	if (list->more > 0)
		text_print(&list->words, " and %s more", plain_count(report, list->more));
	return say_text(report, &list->words);
}

/* ---- Ground ---------------------------------------------------------------------------------- */

static struct box sign_box(struct at at)
{
	return (struct box){ at.x, at.y, at.x + SIGN_WIDE, at.y + SIGN_HIGH };
}

static void draw_words(struct sheet *sheet, struct at at, const struct remark *remark)
{
	remark_words(sheet, (struct at){ at.x + TO_WORDS, at.y }, remark);
}

static void draw_ground(struct sheet *sheet, struct at at, const struct remark *remark)
{
	const struct entry *entry = remark->of;
	struct sink *out = sheet->report.out;

	if (entry && !sheet->asked->is_plain) {
		ink_open(out, "fill=\"%s\"", hatch_tint(entry, hatch_rank(sheet, entry)));
		ink_box(out, sign_box(at));
		ink_close(out);
	}
	if (entry && sunlight_spares(sheet->asked, entry->class))
		ink_open(out, "fill=\"url(#as-%c)\" stroke=\"#000000\" stroke-width=\"0.2\"",
			entry->letter);
	else
		ink_open(out, "fill=\"none\" stroke=\"#000000\" stroke-width=\"0.2\"");
	ink_box(out, sign_box(at));
	ink_close(out);
	draw_words(sheet, at, remark);
}

/* By entry of the legend: its regions. To be freed. */
static struct region_words *regions_of(const struct takeoff *takeoff)
{
	const struct survey *survey = &takeoff->survey;
	struct region_words *regions = memory_new(takeoff->plot.details.legend_count + 1,
		sizeof *regions);

	for (size_t i = 0; i < takeoff->plot.details.legend_count; i++)
		regions[i] = REGION_WORDS_NONE;
	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		region_words_add(&regions[survey->regions[i].entry -
			takeoff->plot.details.legend], &survey->regions[i]);
	return regions;
}

void signs_add_ground(struct remark_list *list, const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct region_words *regions = regions_of(takeoff);
	const struct surface surface = surface_of(report->plot);

	for (int i = 0; i < takeoff->areas.count; i++) {
		const struct area_row *row = &takeoff->areas.list[i];
		const char *words = !row->entry ? surface_is_graded(&surface) ?
			"open ground, graded" : "open ground, left as it is" :
			say(report, "%s %c, %s: %s", row->class, row->letter, row->name,
			region_words_end(&regions[row->entry - takeoff->plot.details.legend],
			report));
		struct remark *remark;

		if (row->cells == 0)
			continue;
		remark = remark_add(list, SIGN_HIGH, WIDE - TO_WORDS, words);
		remark->draw = draw_ground;
		remark->of = row->entry;
	}
	free(regions);
}

/* ---- Signs ----------------------------------------------------------------------------------- */

static void draw_across(struct sheet *sheet, struct at at)
{
	struct box box = sign_box(at);
	nm middle = box_middle(box).y;

	ink_line(sheet->report.out, (struct at){ box.left, middle },
		(struct at){ box.right, middle });
}

/* A line of its pen. */
static void draw_line(struct sheet *sheet, struct at at, const struct remark *remark)
{
	sheet_pen(sheet, (enum pen)remark->index);
	draw_across(sheet, at);
	sheet_lift(sheet);
	draw_words(sheet, at, remark);
}

static void draw_service(struct sheet *sheet, struct at at, const struct remark *remark)
{
	around_pen(sheet, remark->of);
	draw_across(sheet, at);
	around_lift(sheet, remark->of);
	draw_words(sheet, at, remark);
}

static void draw_box(struct sheet *sheet, struct at at, const struct remark *remark)
{
	sheet_pen(sheet, (enum pen)remark->index);
	ink_box(sheet->report.out, sign_box(at));
	sheet_lift(sheet);
	draw_words(sheet, at, remark);
}

/* A post, a tie. */
static void draw_point(struct sheet *sheet, struct at at, const struct remark *remark)
{
	struct at middle = box_middle(sign_box(at));

	sheet_pen(sheet, (enum pen)remark->index);
	if (remark->index == PEN_POST)
		ink_box(sheet->report.out, box_around(middle, NM_PER_MM, NM_PER_MM));
	else
		ink_circle(sheet->report.out, middle, NM_PER_MM * 6 / 10);
	sheet_lift(sheet);
	draw_words(sheet, at, remark);
}

static void draw_drop(struct sheet *sheet, struct at at, const struct remark *remark)
{
	around_drop_sign(sheet, (struct at){ box_middle(sign_box(at)).x, at.y + 3 * NM_PER_MM },
		NM_PER_MM);
	draw_words(sheet, at, remark);
}

static void draw_tap(struct sheet *sheet, struct at at, const struct remark *remark)
{
	around_tap_sign(sheet, box_middle(sign_box(at)), NM_PER_MM);
	draw_words(sheet, at, remark);
}

static void draw_drip(struct sheet *sheet, struct at at, const struct remark *remark)
{
	struct box box = sign_box(at);
	struct at middle = box_middle(box);

	draw_line(sheet, at, remark);
	sheet_pen(sheet, PEN_EMITTER);
	for (int i = 1; i < 4; i++)
		drip_marks_emitter(sheet, (struct at){ box.left + (box.right - box.left) * i / 4,
			middle.y });
	sheet_lift(sheet);
}

static void draw_level(struct sheet *sheet, struct at at, const struct remark *remark)
{
	survey_marks_cross(sheet, box_middle(sign_box(at)));
	draw_words(sheet, at, remark);
}

static void draw_sunlight(struct sheet *sheet, struct at at, const struct remark *remark)
{
	sunlight_sign(sheet, sign_box(at), remark->index);
	draw_words(sheet, at, remark);
}

typedef void sign_draw(struct sheet *sheet, struct at at, const struct remark *remark);

/* pen: of a line, a box or a point. */
static struct remark *add_sign(struct remark_list *list, sign_draw *draw, enum pen pen,
	const char *words)
{
	struct remark *remark = remark_add(list, SIGN_HIGH, WIDE - TO_WORDS, words);

	remark->draw = draw;
	remark->index = (int)pen;
	return remark;
}

static void add_fences(struct remark_list *list, const struct report *report)
{
	const struct fences *fences = &report->takeoff->fences;
	bool has_gates = false;

	for (int i = 0; i < fences->count; i++) {
		add_sign(list, draw_line, PEN_FENCE, i == 0 ? say(report, "fence %s",
			fences->list[i].name) : say(report, "fence %d, %s: %d.7 is its post 7",
			i + 1, fences->list[i].name, i + 1));
		has_gates |= fences->list[i].gate_count > 0;
	}
	if (fences->count > 0)
		add_sign(list, draw_point, PEN_POST, "post, numbered as in the fence part");
	if (has_gates)
		add_sign(list, draw_line, PEN_GATE, "gate G1 with what is clear between its posts");
}

/* One for each kind and state that there is. */
static void add_services(struct remark_list *list, const struct report *report)
{
	const struct services *services = &report->plot->details.around.services;
	bool is_told[SERVICE_KINDS][2] = { { false } };

	for (size_t i = 0; i < services->count; i++) {
		const struct service *service = &services->items[i];

		if (is_told[service->kind][service->is_to_lay])
			continue;
		is_told[service->kind][service->is_to_lay] = true;
		add_sign(list, draw_service, PEN_WATER, say(report, "%s, %s",
			service_words[service->kind], service->is_to_lay ? "to lay" : "existing"))
			->of = service;
	}
	if (services->count > 0)
		remark_paragraph(list, "Services are drawn as somebody told: have them marked "
			"before any digging.");
}

static void add_around(struct remark_list *list, const struct report *report)
{
	const struct surroundings *around = &report->plot->details.around;

	add_services(list, report);
	if (around->houses.count > 0)
		add_sign(list, draw_box, PEN_HOUSE, "house");
	if (around->shades.count > 0)
		add_sign(list, draw_box, PEN_SHADE, "what casts shade besides: trees, hedges");
	beyond_add(list, report);
	if (around->kept.count > 0)
		add_sign(list, draw_line, PEN_KEEP, "ground that is kept: no digging within");
	if (around->has_drop)
		add_sign(list, draw_drop, PEN_DROP, "where deliveries are put down");
	if (around->has_tap)
		add_sign(list, draw_tap, PEN_TAP, "tap");
	if (report->takeoff->watering.legs.count > 0)
		add_sign(list, draw_line, PEN_HEADER, "header of the drip lines");
	if (report->takeoff->watering.sleeve_count > 0)
		add_sign(list, draw_line, PEN_SLEEVE, "its sleeve, laid before the base");
	if (report->takeoff->watering.count > 0)
		add_sign(list, draw_drip, PEN_DRIP, "drip line, a dot for each emitter");
	if (around->ties.count > 0)
		add_sign(list, draw_point, PEN_TIE, "point that is tied to something that stays");
}

static void add_levels(struct remark_list *list, const struct report *report)
{
	const struct details *details = &report->plot->details;
	const char *finished = finished_words(report);

	if (details->levels.step > 0 || details->finish.has_level)
		add_sign(list, draw_level, PEN_LEVEL, "drop from the level string to the ground, "
			"or to what is to be finished ground");
	if (finished)
		remark_paragraph(list, untied(report, finished));
}

static void add_sunlight(struct remark_list *list, const struct report *report)
{
	for (enum sun_class class = SUN_FULL; class <= SUN_SHADE; class++) {
		struct remark *remark = remark_add(list, SIGN_HIGH, WIDE - TO_WORDS, say(report,
			"%s: %s h of sun a day", word_label(&sun_class_words[class]),
			sun_class_hours(report, class)));

		remark->draw = draw_sunlight;
		remark->index = (int)class;
	}
	remark_paragraph(list, sunlight_words(report));
}

void signs_add(struct remark_list *list, const struct report *report, const struct svg_asked *asked)
{
	if (report->takeoff->walls.count > 0)
		remark_paragraph(list, "Raised beds: both faces of the wall. A number at a side is "
			"that of its laying sheet.");
	add_fences(list, report);
	add_around(list, report);
	plant_marks_signs(list, report);
	if (asked->with & DRAW_LEVELS)
		add_levels(list, report);
	if (asked->with & DRAW_SUN)
		add_sunlight(list, report);
	if (asked->with & DRAW_STRINGS)
		add_sign(list, draw_line, PEN_STRING, "string of the set-out with its offset; "
			"points have their numbers");
}
