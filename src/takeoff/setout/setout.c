#include "takeoff/setout/lines.h"
#include "takeoff/setout/marks.h"
#include "takeoff/setout/rectangles.h"
#include "takeoff/setout/ties.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/cover.h"
#include "takeoff/common/basis.h"

#define FEET(feet) ((feet) * NM_PER_FOOT)
#define MM(mm) ((mm) * NM_PER_MM)

/* Common practice, no published source. 3-4-5: Euclid, Elements, book I, proposition 48. */
static const struct measures {
	nm board;  /* from the outermost dig to the boards */
	nm inside; /* from the plan's edge to a stake in place of a board */
	nm apart;  /* from a stake to the next under a long string, at most */
	nm unit;   /* what 3, 4 and 5 are multiplied with, and how often at most */
	nm finest; /* what a tape is read to */
} measures[] = {
	[UNITS_IMPERIAL] = { FEET(4), FEET(1), FEET(30), FEET(1), NM_PER_INCH / 8 },
	[UNITS_METRIC] = { MM(1200), MM(300), MM(9000), MM(300), NM_PER_MM },
};
enum { SQUARE_MOST = 4 }; /* 12-16-20 */

nm setout_rounded(nm length, enum units units)
{
	nm finest = measures[units].finest, size = length < 0 ? -length : length;
	nm rounded = (size + finest / 2) / finest * finest;

	return length < 0 ? -rounded : rounded;
}

/* ---- Boards ---------------------------------------------------------------------------------- */

static struct cover_box joined(struct cover_box a, nm left, nm top, nm right, nm bottom)
{
	return (struct cover_box){ nm_least(a.left, left), nm_least(a.top, top),
		nm_most(a.right, right), nm_most(a.bottom, bottom), 0 };
}

static struct cover_box with_region(struct cover_box box, const struct region *region, nm cell)
{
	nm reach = region_is_raised(region) ? block_length(&region->entry->block, BED_REACH) : 0;

	return joined(box, region->left * cell - reach, region->first_cell.y * cell - reach,
		(region->most.x + 1) * cell + reach, (region->most.y + 1) * cell + reach);
}

static struct cover_box with_fence(struct cover_box box, const struct fencing *fencing)
{
	for (int i = 0; i < fencing->post_count && !stop_asked(); i++) {
		const struct fence_post *post = &fencing->posts[i];
		nm half = fencing_hole(fencing, post->kind)->across / 2;

		box = joined(box, post->at.x - half, post->at.y - half, post->at.x + half,
			post->at.y + half);
	}
	return box;
}

/* The rectangle round all that is dug; the whole plan where nothing is. */
static struct cover_box dug(const struct setout *setout)
{
	const struct survey *survey = setout->survey;
	const struct cover_box plan = { 0, 0, setout->width, setout->height, 0 };
	struct cover_box box = { setout->width, setout->height, 0, 0, 0 };

	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		box = with_region(box, &survey->regions[i], survey->cell);
	for (int i = 0; i < setout->fences->count; i++)
		box = with_fence(box, &setout->fences->list[i]);
	return box.left > box.right ? plan : cover_clip(box, &plan);
}

/* Before the first dig, so far from where the plan begins. */
static struct setout_end end_before(nm first, nm plan, const struct measures *by)
{
	bool is_stake = first < by->board;

	return (struct setout_end){ is_stake ? nm_least(by->inside, plan / 2) :
		first - by->board, is_stake };
}

static struct setout_end end_after(nm last, nm plan, const struct measures *by)
{
	struct setout_end end = end_before(plan - last, plan, by);

	end.at = plan - end.at;
	return end;
}

/* None where both are at one place. */
static int stakes_between(const struct setout_end *from, const struct setout_end *to, nm apart)
{
	return (int)((to->at - from->at - 1) / apart);
}

static void set_ends(struct setout *out, const struct measures *by)
{
	struct cover_box box = dug(out);
	struct setout_end *ends = out->ends;

	ends[SETOUT_LEFT] = end_before(box.left, out->width, by);
	ends[SETOUT_TOP] = end_before(box.top, out->height, by);
	ends[SETOUT_RIGHT] = end_after(box.right, out->width, by);
	ends[SETOUT_BOTTOM] = end_after(box.bottom, out->height, by);
	out->level_stakes = stakes_between(&ends[SETOUT_LEFT], &ends[SETOUT_RIGHT], by->apart);
	out->upright_stakes = stakes_between(&ends[SETOUT_TOP], &ends[SETOUT_BOTTOM], by->apart);
}

static void set_crossings(const struct setout *setout, struct setout_string *string)
{
	nm first = 0, last = string->is_upright ? setout->height : setout->width;

	if (!string->is_frame) {
		first = setout->ends[string->is_upright ? SETOUT_TOP : SETOUT_LEFT].at;
		last = setout->ends[string->is_upright ? SETOUT_BOTTOM : SETOUT_RIGHT].at;
	}
	string->from = string->is_upright ? (struct spot){ string->at, first } :
		(struct spot){ first, string->at };
	string->to = string->is_upright ? (struct spot){ string->at, last } :
		(struct spot){ last, string->at };
}

/* ---- The whole ------------------------------------------------------------------------------- */

static void set_square(struct setout *out, nm unit)
{
	nm longer = nm_most(out->width, out->height), shorter = nm_least(out->width, out->height);

	out->is_long_across = out->width >= out->height;
	for (nm times = SQUARE_MOST; times > 0; times--) {
		if (3 * times * unit > shorter || 4 * times * unit > longer)
			continue;
		for (int i = 0; i < 3; i++)
			out->square[i] = (3 + i) * times * unit;
		return;
	}
}

void setout_make(struct setout *out, struct arena *arena, const struct plot *plot,
	const struct survey *survey, const struct fences *fences)
{
	const struct measures *by = &measures[plot_units(plot)];
	nm width = survey->columns * survey->cell, height = survey->rows * survey->cell;
	struct setout_string *strings;

	*out = (struct setout){ .survey = survey, .fences = fences, .width = width,
		.height = height, .diagonal = diagonal_of(width, height) };
	set_square(out, by->unit);
	set_ends(out, by);
	ties_find(out, plot, arena);
	strings = lines_find(out, arena);
	for (int i = 0; i < out->string_count; i++)
		set_crossings(out, &strings[i]);
	marks_find(out, strings, arena);
	rectangles_find(out, arena);
}

const struct word setout_use_words[] = {
	[USE_FRAME] = { "frame", NULL, NULL }, [USE_POSTS] = { "posts", NULL, NULL },
	[USE_WALLS] = { "walls", NULL, NULL }, [USE_FIXTURES] = { "fixtures", NULL, NULL },
	[USE_BEDS] = { "beds", NULL, NULL }, [USE_LAWNS] = { "lawns", NULL, NULL },
	[USE_PATHS] = { "paths", NULL, NULL },
};
const struct word setout_side_words[SETOUT_SIDES] = {
	[SETOUT_LEFT] = { "left", NULL, NULL }, [SETOUT_TOP] = { "top", NULL, NULL },
	[SETOUT_RIGHT] = { "right", NULL, NULL }, [SETOUT_BOTTOM] = { "bottom", NULL, NULL },
};
