#include "report/svg/layout.h"
#include "base/number.h"
#include "report/words/words.h"

const char *const svg_with_words[] = { "levels", "strings", "sun", NULL };

static const nm MARGIN = 10 * NM_PER_MM, TITLE_HIGH = 24 * NM_PER_MM, APART = 4 * NM_PER_MM;
static const nm ROUND_PLAN = 12 * NM_PER_MM; /* for dimensions and offsets */
static const nm WIDE = COLUMN_WIDTH * NM_PER_MM, GAP = COLUMN_GAP * NM_PER_MM;
static const nm STEP = NM_PER_MM; /* in which the height of remarks below a plan is found */

/* ---- Remarks in columns ---------------------------------------------------------------------- */

/* Some of the remarks, from `first` to the one before `beyond`. */
struct some {
	const struct remarks *remarks;
	int first, beyond;
};

/* Places them into columns in a box, places[0] the first; NULL: nowhere. Returns the first for
 * which there is no room. */
static int flow(struct some some, struct box into, struct at *places)
{
	struct at at = { into.left, into.top };
	int i = some.first;

	while (i < some.beyond) {
		const struct remark *remark = &some.remarks->list[i];
		bool has_next = remark->leads && i + 1 < some.beyond;
		nm wanted = remark->height + (has_next ? remark[1].height : 0);

		if (at.y + wanted <= into.bottom) {
			if (places)
				places[i - some.first] = at;
			at.y += remark->height;
			i++;
		} else if (at.y > into.top && at.x + 2 * WIDE + GAP <= into.right) {
			at = (struct at){ at.x + WIDE + GAP, into.top };
		} else {
			break;
		}
	}
	return i;
}

static nm columns_wide(int columns)
{
	return columns * WIDE + (columns - 1) * GAP;
}

void layout_places(const struct layout *layout, const struct remarks *remarks, struct at *places)
{
	flow((struct some){ remarks, layout->first, layout->beyond }, layout->aside, places);
}

/* ---- The sheet ------------------------------------------------------------------------------- */

static struct layout blank(enum paper paper, enum paper_turn turn)
{
	const struct paper_row *row = &papers[paper];
	bool is_turned = turn == TURN_LANDSCAPE;
	struct layout layout = { .paper = paper, .turn = turn, .sheet = 1, .sheets = 1,
		.width = is_turned ? row->height : row->width,
		.height = is_turned ? row->width : row->height };

	layout.title = (struct box){ MARGIN, layout.height - MARGIN - TITLE_HIGH,
		layout.width - MARGIN, layout.height - MARGIN };
	layout.aside = (struct box){ MARGIN, MARGIN, layout.width - MARGIN,
		layout.title.top - APART };
	layout.columns = (int)((box_width(layout.aside) + GAP) / (WIDE + GAP));
	return layout;
}

/* Remarks at the right, in as few columns as take them. */
static bool split_across(struct layout *layout, const struct remarks *remarks, int count)
{
	struct box all = layout->aside;

	for (int columns = 1; columns <= layout->columns; columns++) {
		struct box right = all;

		right.left = all.right - columns_wide(columns);
		if (flow((struct some){ remarks, 0, count }, right, NULL) < count)
			continue;
		layout->aside = right;
		layout->field = (struct box){ all.left, all.top, right.left - APART, all.bottom };
		return true;
	}
	return false;
}

/* Remarks below, as low as they can be. */
static bool split_down(struct layout *layout, const struct remarks *remarks, int count)
{
	struct box all = layout->aside;

	for (nm high = STEP; high < box_height(all); high += STEP) {
		struct box below = all;

		below.top = all.bottom - high;
		if (flow((struct some){ remarks, 0, count }, below, NULL) < count)
			continue;
		layout->aside = below;
		layout->field = (struct box){ all.left, all.top, all.right, below.top - APART };
		return true;
	}
	return false;
}

/* ---- The scale ------------------------------------------------------------------------------- */

static nm plan_width(const struct report *report)
{
	return report->takeoff->survey.columns * report->takeoff->survey.cell;
}

static nm plan_height(const struct report *report)
{
	return report->takeoff->survey.rows * report->takeoff->survey.cell;
}

/* What of the field the plan may take. */
static nm room_across(const struct layout *layout)
{
	return nm_most(box_width(layout->field) - 2 * ROUND_PLAN, 0);
}

static nm room_down(const struct layout *layout)
{
	return nm_most(box_height(layout->field) - 2 * ROUND_PLAN, 0);
}

static bool fits(const struct layout *layout, const struct report *report, int scale)
{
	return scaled(plan_width(report), scale) <= room_across(layout) &&
		scaled(plan_height(report), scale) <= room_down(layout);
}

/* The scale asked for, else the largest usual one; 0: none fits. */
static int best_scale(const struct layout *layout, const struct report *report, int asked)
{
	const int *usual = scales_of(report->units);

	if (asked)
		return fits(layout, report, asked) ? asked : 0;
	while (*usual && !fits(layout, report, *usual))
		usual++;
	return *usual;
}

/* What a sheet is made of. */
struct made_of {
	enum paper paper;
	enum paper_turn turn;
	int scale; /* asked for; 0: none is */
	const struct report *report;
	const struct remarks *remarks;
};

/* A sheet with the first `count` remarks beside the plan; its scale is 0 where that does not
 * fit. */
static struct layout with_remarks(const struct made_of *of, int count)
{
	struct layout layout = blank(of->paper, of->turn);
	const struct report *report = of->report;
	bool is_split = of->turn == TURN_LANDSCAPE ?
		split_across(&layout, of->remarks, count) :
		split_down(&layout, of->remarks, count);
	struct at middle = box_middle(layout.field);

	layout.beyond = count;
	layout.scale = is_split ? best_scale(&layout, report, of->scale) : 0;
	if (layout.scale)
		layout.datum = (struct at){
			middle.x - scaled(plan_width(report), layout.scale) / 2,
			middle.y - scaled(plan_height(report), layout.scale) / 2 };
	return layout;
}

/* The same with as many sections as do not make the plan smaller. */
static struct layout filled(const struct made_of *of)
{
	struct layout best = with_remarks(of, of->remarks->needed);

	for (int count = best.beyond + 1; best.scale && count <= of->remarks->count; count++) {
		struct layout more = with_remarks(of, count);

		if (more.scale != best.scale)
			break;
		best = more;
	}
	return best;
}

/* The better of the ways that the sheet may be turned: larger, then the one with more on it. */
static struct layout turned(enum paper paper, const struct svg_asked *asked,
	const struct report *report, const struct remarks *remarks)
{
	struct layout best = { .scale = 0 };

	for (int turn = PAPER_TURNS - 1; turn >= 0; turn--) {
		struct layout next;

		if (asked->turn != AS_FITS && asked->turn != turn)
			continue;
		next = filled(&(struct made_of){ paper, (enum paper_turn)turn, asked->scale,
			report, remarks });
		if (best.width == 0 || (next.scale && (!best.scale || next.scale < best.scale ||
		    (next.scale == best.scale && next.beyond > best.beyond))))
			best = next;
	}
	return best;
}

/* ---- Later sheets ---------------------------------------------------------------------------- */

/* Makes it the sheet asked for, of as many as there are. */
static bool number_sheets(struct layout *layout, const struct remarks *remarks, int wanted)
{
	struct layout first = *layout;
	int next = layout->beyond, sheets = 1;

	while (next < remarks->count) {
		struct layout more = blank(first.paper, first.turn);
		int beyond = flow((struct some){ remarks, next, remarks->count }, more.aside, NULL);

		sheets++;
		more.scale = first.scale;
		more.first = next;
		more.sheet = sheets;
		more.beyond = next = most(beyond, next + 1);
		if (sheets == wanted)
			*layout = more;
	}
	layout->sheets = sheets;
	return wanted <= sheets;
}

/* ---- All of it ------------------------------------------------------------------------------- */

static int smallest(const struct report *report)
{
	const int *usual = scales_of(report->units);

	while (usual[1])
		usual++;
	return *usual;
}

/* "5 in x 4 in". */
static const char *size_words(const struct report *report, nm across, nm down)
{
	return say(report, "%s x %s", plain_inches(report, across), plain_inches(report, down));
}

static bool refuse(const struct layout *layout, const struct svg_asked *asked,
	const struct report *report, struct text *why)
{
	int scale = asked->scale ? asked->scale : smallest(report);

	text_print(why, "the plan is too large for %s %s at %s1:%d: it takes %s on paper, where "
		"there is room for %s", papers[layout->paper].name,
		paper_turn_words[layout->turn], asked->scale ? "" : "any scale down to ", scale,
		size_words(report, scaled(plan_width(report), scale),
		scaled(plan_height(report), scale)),
		size_words(report, room_across(layout), room_down(layout)));
	return false;
}

bool layout_find(struct layout *out, const struct svg_asked *asked, const struct report *report,
	const struct remarks *remarks, struct text *why)
{
	enum paper small = report->units == UNITS_METRIC ? PAPER_A4 : PAPER_LETTER;
	enum paper paper = asked->paper == AS_FITS ? small : (enum paper)asked->paper;

	*out = turned(paper, asked, report, remarks);
	if (!out->scale && asked->paper == AS_FITS)
		*out = turned(small + 1, asked, report, remarks);
	if (!out->scale)
		return refuse(out, asked, report, why);
	if (number_sheets(out, remarks, asked->sheet))
		return true;
	text_print(why, "the drawing has %d sheet%s, so there is no sheet %d", out->sheets,
		out->sheets == 1 ? "" : "s", asked->sheet);
	return false;
}
