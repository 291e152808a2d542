#include "report/svg/section.h"
#include "base/number.h"
#include "base/stop.h"
#include "report/svg/signs.h"
#include "report/svg/type.h"

static const nm WIDE = COLUMN_WIDTH * NM_PER_MM, TITLE_LEAST = 4 * NM_PER_MM;
static const nm DRAWN_WIDE = 30 * NM_PER_MM, DRAWN_HIGH = 70 * NM_PER_MM;
static const nm TO_LABELS = 32 * NM_PER_MM, BETWEEN = 6 * NM_PER_MM / 10;
static const nm AROUND_WALL = 50 * NM_PER_MM, INTO_BED = 200 * NM_PER_MM; /* of the ground */

/* A way of building. */
struct build {
	const struct wall *wall; /* the first that is built so */
	nm embed;
};

/* ---- What it is made of ---------------------------------------------------------------------- */

/* Heights upwards from finished ground, lengths into the bed from the wall's outer face. */
struct cut_wall {
	const struct wall *wall;
	nm left, right;          /* how much of the ground is drawn */
	nm bottom, base_top;     /* of the base; its top is the wall's foot */
	nm top, cap_top;         /* of the wall; of the cap, the same where there is none */
	nm depth, cap_depth;     /* across the wall */
	nm reach, reach_in;      /* of the base, past both faces */
	nm course;
	int courses;
	nm mulch_top, soil_top, soil_bottom; /* within the bed; no mulch: the first two are equal */
	bool is_base_all;        /* base all over the inside */
};

static struct cut_wall cut_wall_of(const struct report *report, const struct build *build)
{
	const struct wall *wall = build->wall;
	const struct block *bed = wall->bed;
	const struct fill *fill = fills_find(&report->takeoff->fills, wall->region);
	enum bed_inside inside = (enum bed_inside)block_number(bed, BED_INSIDE);
	struct cut_wall cut = { .wall = wall, .depth = wall->block.across, .course = wall->block.up,
		.courses = wall->courses, .base_top = -build->embed,
		.reach = block_length(bed, BED_REACH),
		.reach_in = block_length(bed, BED_REACH_IN) };

	cut.bottom = cut.base_top - block_length(bed, BED_BASE);
	cut.top = cut.base_top + wall_height(bed);
	cut.cap_top = cut.top + (wall->has_cap ? wall->cap_block.up : 0);
	cut.cap_depth = wall->has_cap ? wall->cap_block.across : 0;
	cut.is_base_all = inside == INSIDE_BASE;
	cut.left = -cut.reach - AROUND_WALL;
	cut.right = nm_most(cut.depth, cut.cap_depth) +
		nm_most(cut.reach_in + AROUND_WALL, INTO_BED);
	cut.mulch_top = cut.top - block_length(bed, BED_FREEBOARD);
	cut.soil_top = cut.mulch_top - (fill ? fill->mulch_depth : 0);
	cut.soil_bottom = cut.soil_top - (!fill ? 0 :
		fill->deepest > 0 ? fill->deepest : fill->soil_depth);
	return cut;
}

static nm lowest(const struct cut_wall *cut)
{
	return nm_least(cut->bottom, 0) - AROUND_WALL;
}

/* The largest usual scale at which it has room. */
static int scale_for(const struct cut_wall *cut, enum units units)
{
	const int *usual = scales_of(units);

	while (usual[1] && (scaled(cut->right - cut->left, *usual) > DRAWN_WIDE ||
	       scaled(cut->cap_top - lowest(cut), *usual) > DRAWN_HIGH))
		usual++;
	return *usual;
}

/* ---- Labels ---------------------------------------------------------------------------------- */

/* What is told of a section, from the top down. */
enum part { TELL_CAP, TELL_FREE, TELL_MULCH, TELL_SOIL, TELL_WALL, TELL_GROUND, TELL_EMBED,
	TELL_BASE, TELLS };

/* The words of a part; NULL where the wall has none. */
static const char *part_words(const struct report *report, const struct cut_wall *cut,
	enum part part)
{
	const struct wall *wall = cut->wall;

	switch (part) {
	case TELL_CAP:
		return !wall->has_cap ? NULL : say(report, "cap %s",
			plain_size(report, &wall->cap_block));
	case TELL_FREE:
		return say(report, "left free %s", plain_inches(report, cut->top - cut->mulch_top));
	case TELL_MULCH:
		return cut->mulch_top == cut->soil_top ? NULL : say(report, "mulch %s",
			plain_inches(report, cut->mulch_top - cut->soil_top));
	case TELL_SOIL:
		return cut->soil_top <= cut->soil_bottom ? NULL : say(report, "soil %s",
			plain_inches(report, cut->soil_top - cut->soil_bottom));
	case TELL_WALL:
		return say(report, "%s of block %s, %s high, %s of it above ground",
			untied(report, word_count(report, wall->courses, "course", "courses")),
			plain_size(report, &wall->block),
			plain_inches(report, cut->top - cut->base_top),
			plain_inches(report, cut->top));
	case TELL_GROUND:
		return "finished ground";
	case TELL_EMBED:
		return say(report, "embed %s", plain_inches(report, -cut->base_top));
	case TELL_BASE:
		return say(report, "base %s, %s past the outer face, %s past the inner one%s",
			plain_inches(report, cut->base_top - cut->bottom),
			plain_inches(report, cut->reach), plain_inches(report, cut->reach_in),
			cut->is_base_all ? ", and all over the inside" : "");
	case TELLS:
		break;
	}
	return NULL;
}

/* What of the section a part's words are of: along and up. */
static struct spot part_spot(const struct cut_wall *cut, enum part part)
{
	nm inside = (nm_most(cut->depth, cut->cap_depth) + cut->right) / 2;

	switch (part) {
	case TELL_CAP:
		return (struct spot){ cut->depth / 2, (cut->top + cut->cap_top) / 2 };
	case TELL_FREE:
		return (struct spot){ inside, (cut->top + cut->mulch_top) / 2 };
	case TELL_MULCH:
		return (struct spot){ inside, (cut->mulch_top + cut->soil_top) / 2 };
	case TELL_SOIL:
		return (struct spot){ inside, (2 * cut->soil_top + cut->soil_bottom) / 3 };
	case TELL_WALL:
		return (struct spot){ cut->depth / 2, cut->base_top +
			(2 * cut->courses + 1) / 4 * cut->course + cut->course / 2 };
	case TELL_GROUND:
		return (struct spot){ cut->left / 2, 0 };
	case TELL_EMBED:
		return (struct spot){ cut->depth / 2, cut->base_top / 2 };
	case TELL_BASE:
	case TELLS:
		break;
	}
	return (struct spot){ cut->depth / 2, (cut->base_top + cut->bottom) / 2 };
}

/* ---- Drawing --------------------------------------------------------------------------------- */

/* Where a section is on paper. */
struct view {
	struct sheet *sheet;
	int scale;
	struct at zero; /* finished ground at the outer face */
};

static struct at view_at(const struct view *view, nm along, nm up)
{
	return (struct at){ view->zero.x + scaled(along, view->scale),
		view->zero.y - scaled(up, view->scale) };
}

/* Nothing where it has no height. */
static void draw_part(const struct view *view, enum pen pen, nm left, nm right, nm top, nm bottom)
{
	struct at from = view_at(view, left, top), to = view_at(view, right, bottom);

	if (top <= bottom)
		return;
	sheet_pen(view->sheet, pen);
	ink_box(view->sheet->report.out, (struct box){ from.x, from.y, to.x, to.y });
	sheet_lift(view->sheet);
}

static void draw_ground_line(const struct view *view, const struct cut_wall *cut)
{
	sheet_pen(view->sheet, PEN_FRAME);
	ink_line(view->sheet->report.out, view_at(view, cut->left, 0), view_at(view, 0, 0));
	sheet_lift(view->sheet);
}

static void draw_cut(const struct view *view, const struct cut_wall *cut)
{
	nm cap_left = (cut->depth - cut->cap_depth) / 2;

	draw_part(view, PEN_EARTH, cut->left, cut->right, 0, lowest(cut));
	draw_part(view, PEN_STONE, -cut->reach, cut->is_base_all ? cut->right :
		cut->depth + cut->reach_in, cut->base_top, cut->bottom);
	draw_part(view, PEN_SOIL, cut->depth, cut->right, cut->soil_top, cut->soil_bottom);
	if (cut->soil_top > cut->soil_bottom && cut->soil_bottom > cut->base_top)
		draw_part(view, PEN_SOIL, cut->depth, cut->depth + cut->reach_in, cut->soil_bottom,
			cut->base_top);
	draw_part(view, PEN_MULCH, cut->depth, cut->right, cut->mulch_top, cut->soil_top);
	for (int i = 0; i < cut->courses; i++)
		draw_part(view, PEN_SOLID, 0, cut->depth, cut->base_top + (i + 1) * cut->course,
			cut->base_top + i * cut->course);
	draw_part(view, PEN_SOLID, cap_left, cap_left + cut->cap_depth, cut->cap_top, cut->top);
	draw_ground_line(view, cut);
}

/* The words of a part, there or below, with a line to what they are of. Returns where the next may
 * stand. */
static struct at draw_label(const struct view *view, const struct cut_wall *cut, enum part part,
	const char *words, struct at label)
{
	struct sheet *sheet = view->sheet;
	struct spot spot = part_spot(cut, part);
	struct at of = view_at(view, spot.x, spot.y);
	nm high = type_high(TYPE_SMALL);
	const char *line;

	label.y = nm_most(label.y, of.y - high / 2);
	sheet_pen(sheet, PEN_THIN);
	ink_circle(sheet->report.out, of, NM_PER_MM / 4);
	ink_line(sheet->report.out, of, (struct at){ label.x - BETWEEN, label.y + high / 2 });
	sheet_lift(sheet);
	sheet_pen(sheet, PEN_WORDS);
	while ((line = type_line(&words, TYPE_SMALL, WIDE - TO_LABELS, sheet->arena)) != NULL) {
		ink_words(sheet->report.out, (struct at){ label.x, label.y + high / 2 },
			(struct type){ .size = TYPE_SMALL }, line);
		label.y += high;
	}
	sheet_lift(sheet);
	label.y += BETWEEN;
	return label;
}

static void draw_section(struct sheet *sheet, struct at at, const struct remark *remark)
{
	const struct build *build = remark->of;
	const struct report *report = &sheet->report;
	const struct cut_wall cut = cut_wall_of(report, build);
	struct view view = { sheet, scale_for(&cut, report->units), { 0, 0 } };
	nm top = at.y + remark->line_count * type_high(TYPE_USUAL) + 2 * NM_PER_MM;
	struct at label = { at.x + TO_LABELS, top };

	view.zero = (struct at){ at.x - scaled(cut.left, view.scale),
		top + scaled(cut.cap_top, view.scale) };
	remark_words(sheet, at, remark);
	draw_cut(&view, &cut);
	for (int part = 0; part < TELLS; part++) {
		const char *words = part_words(report, &cut, (enum part)part);

		if (words)
			label = draw_label(&view, &cut, (enum part)part, words, label);
	}
}

/* ---- All of them ----------------------------------------------------------------------------- */

static nm labels_high(const struct report *report, const struct cut_wall *cut, struct arena *arena)
{
	nm high = 0;

	for (int part = 0; part < TELLS; part++) {
		const char *words = part_words(report, cut, (enum part)part);

		if (!words)
			continue;
		high += BETWEEN;
		while (type_line(&words, TYPE_SMALL, WIDE - TO_LABELS, arena))
			high += type_high(TYPE_SMALL);
	}
	return high;
}

/* What the section takes below its title. Labels begin at the top at the earliest and below what is
 * before them, so the last may end so far below what it is of. */
static nm section_high(const struct report *report, const struct cut_wall *cut, struct arena *arena)
{
	int scale = scale_for(cut, report->units);

	return scaled(cut->cap_top - lowest(cut), scale) + labels_high(report, cut, arena) / 2 +
		4 * NM_PER_MM;
}

static bool is_built_so(const struct report *report, const struct build *build,
	const struct wall *wall)
{
	return build->wall->bed == wall->bed && build->wall->has_cap == wall->has_cap &&
		embed_of(&report->takeoff->embeds, wall->region) == build->embed;
}

/* "Section of the wall of bed b, Raised bed: B1 to B4. 1:20". */
static const char *title_words(const struct report *report, const struct build *build,
	const struct cut_wall *cut)
{
	const struct walls *walls = &report->takeoff->walls;
	const struct survey *survey = &report->takeoff->survey;
	const struct entry *entry = survey->regions[build->wall->region].entry;
	struct region_words regions = REGION_WORDS_NONE;
	struct text scale = TEXT_EMPTY;

	for (int i = 0; i < walls->count && !stop_asked(); i++)
		if (is_built_so(report, build, &walls->list[i]))
			region_words_add(&regions, &survey->regions[walls->list[i].region]);
	scale_write(&scale, scale_for(cut, report->units), report->units);
	return say(report, "Section of the wall of bed %c, %s: %s. %s", entry->letter, entry->name,
		region_words_end(&regions, report), say_text(report, &scale));
}

static void add_section(struct remark_list *list, const struct report *report,
	const struct build *build)
{
	const struct cut_wall cut = cut_wall_of(report, build);
	struct build *kept = arena_new(list->arena, 1, sizeof *kept);
	struct remark *remark;

	*kept = *build;
	remark = remark_add(list, TITLE_LEAST, WIDE, title_words(report, build, &cut));
	remark->height += section_high(report, &cut, list->arena);
	remark->draw = draw_section;
	remark->of = kept;
}

void sections_add(struct remark_list *list, const struct report *report)
{
	const struct walls *walls = &report->takeoff->walls;
	size_t before = list->count;

	for (int i = 0; i < walls->count && !stop_asked(); i++) {
		const struct build build = { &walls->list[i], embed_of(&report->takeoff->embeds,
			walls->list[i].region) };
		bool is_new = true;

		for (size_t j = before; j < list->count && is_new; j++)
			is_new = !is_built_so(report, list->items[j].of, build.wall);
		if (is_new)
			add_section(list, report, &build);
	}
}
