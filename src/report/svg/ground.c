#include "report/svg/ground.h"
#include "base/number.h"
#include "base/stop.h"
#include "report/svg/hatch.h"
#include "report/svg/sunlight.h"
#include "survey/outline.h"
#include "takeoff/walls/wall.h"

/* ---- Paths ----------------------------------------------------------------------------------- */

/* "M2 1H6V5H2Z": round each loop. */
static void add_outline(struct sink *out, const struct outline *outline)
{
	for (int i = 0; i < outline->count && !stop_asked(); i++) {
		const struct loop *loop = &outline->loops[i];

		sink_print(out, "M%d %d", loop->corners[0].x, loop->corners[0].y);
		for (int j = 1; j < loop->count; j++)
			if (loop->corners[j].y == loop->corners[j - 1].y)
				sink_print(out, "H%d", loop->corners[j].x);
			else
				sink_print(out, "V%d", loop->corners[j].y);
		sink_add(out, "Z");
	}
}

/* Where a corner of a loop is in an outline moved inwards by so much, on the ground. */
static struct spot inset(const struct loop *loop, int corner, nm cell, nm by)
{
	struct corner at = loop->corners[corner];
	struct corner before = loop->corners[(corner + loop->count - 1) % loop->count];
	struct corner after = loop->corners[(corner + 1) % loop->count];
	/* The ways in and on, and their right hands, each of which is a side's. */
	int dx = sign(at.x - before.x) + sign(after.x - at.x);
	int dy = sign(at.y - before.y) + sign(after.y - at.y);

	return (struct spot){ at.x * cell - dy * by, at.y * cell + dx * by };
}

static int64_t millionths(nm length, nm cell)
{
	return INT64_C(1000000) * length / cell;
}

static void add_spot(struct sink *out, char command, struct spot spot, nm cell)
{
	sink_print(out, "%c", command);
	ink_millionths(out, millionths(spot.x, cell));
	sink_add(out, " ");
	ink_millionths(out, millionths(spot.y, cell));
}

/* The inner face of a wall. */
static void add_inner(struct sink *out, const struct outline *outline, nm cell, nm depth)
{
	for (int i = 0; i < outline->count && !stop_asked(); i++) {
		const struct loop *loop = &outline->loops[i];

		for (int j = 0; j < loop->count; j++)
			add_spot(out, j == 0 ? 'M' : 'L', inset(loop, j, cell, depth), cell);
		sink_add(out, "Z");
	}
}

/* ---- Regions --------------------------------------------------------------------------------- */

static bool is_built(const struct region *region)
{
	return region->entry->class == CLASS_BED || region->entry->class == CLASS_FIXTURE;
}

/* A width of a line in cells, as the group that scales them has it. */
static void add_width(const struct sheet *sheet, nm width)
{
	ink_millionths(sheet->report.out, millionths(width * sheet->layout->scale,
		sheet->report.takeoff->survey.cell));
}

static void draw_region(struct sheet *sheet, int index)
{
	const struct takeoff *takeoff = sheet->report.takeoff;
	const struct region *region = &takeoff->survey.regions[index];
	struct sink *out = sheet->report.out;
	struct arena arena = ARENA_EMPTY;
	struct outline outline;
	char name[REGION_NAME_MOST];

	survey_region_name(region, name);
	outline_trace(&outline, &arena, sheet->report.plot, &takeoff->survey, index);
	if (!sheet->asked->is_plain) {
		sink_print(out, "<path fill=\"%s\" stroke=\"none\" d=\"",
			hatch_tint(region->entry, hatch_rank(sheet, region->entry)));
		add_outline(out, &outline);
		sink_add(out, "\"/>\n");
	}
	if (sunlight_spares(sheet->asked, region->entry->class))
		sink_print(out, "<path id=\"%s\" fill=\"url(#on-%c)\" d=\"", name,
			region->entry->letter);
	else
		sink_print(out, "<path id=\"%s\" fill=\"none\" d=\"", name);
	add_outline(out, &outline);
	sink_add(out, "\"/>\n");
	arena_clear(&arena);
}

static void draw_wall(struct sheet *sheet, const struct wall *wall)
{
	const struct takeoff *takeoff = sheet->report.takeoff;
	struct sink *out = sheet->report.out;
	struct arena arena = ARENA_EMPTY;
	struct outline outline;

	outline_trace(&outline, &arena, sheet->report.plot, &takeoff->survey, wall->region);
	sink_add(out, "<path d=\"");
	add_outline(out, &outline);
	add_inner(out, &outline, takeoff->survey.cell, wall->block.across);
	sink_add(out, "\"/>\n");
	arena_clear(&arena);
}

static void open_group(struct sheet *sheet, const char *name, nm width)
{
	const struct layout *layout = sheet->layout;
	struct sink *out = sheet->report.out;
	struct text words = TEXT_EMPTY;

	/* The side of a cell on paper in billionths of a millimetre. */
	text_add_decimal(&words, sheet->report.takeoff->survey.cell * 1000 / layout->scale, 9);
	sink_print(out, "<g id=\"%s\" fill-rule=\"evenodd\" stroke=\"#000000\" "
		"transform=\"translate(", name);
	ink_length(out, layout->datum.x);
	sink_add(out, " ");
	ink_length(out, layout->datum.y);
	sink_print(out, ") scale(%s)\" stroke-width=\"", words.bytes);
	add_width(sheet, width);
	sink_add(out, "\">\n");
	text_fini(&words);
}

static void draw_regions(struct sheet *sheet, bool built)
{
	const struct survey *survey = &sheet->report.takeoff->survey;

	open_group(sheet, built ? "built" : "ground", built ? NM_PER_MM / 4 : NM_PER_MM / 8);
	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		if (is_built(&survey->regions[i]) == built)
			draw_region(sheet, i);
	ink_close(sheet->report.out);
}

/* The plan's edge, which words are not to stand on. */
static void draw_edge(struct sheet *sheet)
{
	struct box plan = sheet_plan(sheet), over = box_grown(plan, NM_PER_MM / 4);

	sheet_pen(sheet, PEN_FRAME);
	ink_box(sheet->report.out, plan);
	sheet_lift(sheet);
	room_take(&sheet->room, (struct box){ over.left, over.top, over.right, plan.top });
	room_take(&sheet->room, (struct box){ over.left, plan.bottom, over.right, over.bottom });
	room_take(&sheet->room, (struct box){ over.left, over.top, plan.left, over.bottom });
	room_take(&sheet->room, (struct box){ plan.right, over.top, over.right, over.bottom });
}

void ground_draw(struct sheet *sheet)
{
	const struct walls *walls = &sheet->report.takeoff->walls;

	draw_regions(sheet, false);
	draw_regions(sheet, true);
	if (sheet->asked->with & DRAW_SUN)
		sunlight_draw(sheet);
	open_group(sheet, "walls", NM_PER_MM / 5);
	ink_open(sheet->report.out, "fill=\"%s\"", sheet->asked->is_plain ? "#ffffff" : "#d9d4cb");
	for (int i = 0; i < walls->count && !stop_asked(); i++)
		draw_wall(sheet, &walls->list[i]);
	ink_close(sheet->report.out);
	ink_close(sheet->report.out);
	draw_edge(sheet);
}
