#include "takeoff/fence/panels.h"
#include "base/sort.h"
#include "base/stop.h"
#include "takeoff/fence/stand.h"

#include <stdlib.h>

/* Whether the last whole section and the rest are to be two equal panels. */
static bool is_shared(nm rest, const struct fencing *fencing)
{
	return 2 * rest < fencing->section || rest <= fencing->post;
}

static void cut_two(struct fence_leg *leg, nm both, int lead)
{
	nm half = both / 2;

	leg->cut_count = 2;
	leg->cut[0] = lead < 0 ? half : both - half;
	leg->cut[1] = both - leg->cut[0];
}

/* rest: of a whole section, over 0. */
static void divide_evenly(struct fence_leg *leg, nm rest, const struct fencing *fencing)
{
	bool is_odd = leg->whole % 2 != 0, shared = is_shared(rest, fencing);

	leg->cut_at = shared ? CUT_ENDS : CUT_MIDDLE;
	if (shared || is_odd) {
		leg->whole--;
		cut_two(leg, fencing->section + rest, 0);
	} else {
		leg->cut[leg->cut_count++] = rest;
	}
}

static void divide_from_end(struct fence_leg *leg, nm rest, const struct fencing *fencing, int lead)
{
	leg->cut_at = lead < 0 ? CUT_FIRST : CUT_LAST;
	if (is_shared(rest, fencing)) {
		leg->whole--;
		cut_two(leg, fencing->section + rest, lead);
	} else {
		leg->cut[leg->cut_count++] = rest;
	}
}

void panels_divide(struct fence_leg *leg, const struct fencing *fencing, int lead)
{
	nm room = leg->length - fencing_ease(fencing, leg->at_gate[0]) -
		fencing_ease(fencing, leg->at_gate[1]);
	nm rest;

	leg->whole = 0;
	leg->cut_count = 0;
	leg->cut_at = CUT_LAST;
	if (room <= fencing->post)
		return;
	rest = room % fencing->section;
	leg->whole = room / fencing->section;
	if (leg->whole == 0)
		leg->cut[leg->cut_count++] = rest;
	else if (rest > 0 && lead == 0)
		divide_evenly(leg, rest, fencing);
	else if (rest > 0)
		divide_from_end(leg, rest, fencing, lead);
}

static void group_add(struct panel_group *groups, int *count, nm place, int64_t panels)
{
	if (panels > 0)
		groups[(*count)++] = (struct panel_group){ place, panels };
}

int panels_in_order(const struct fence_leg *leg, nm section,
	struct panel_group groups[PANEL_GROUPS_MOST])
{
	int64_t before = leg->cut_at == CUT_LAST ? leg->whole :
		leg->cut_at == CUT_MIDDLE ? leg->whole / 2 : 0;
	int64_t between = leg->cut_at == CUT_ENDS ? leg->whole : 0;
	int count = 0;

	group_add(groups, &count, section, before);
	for (int i = 0; i < leg->cut_count; i++) {
		group_add(groups, &count, section, i > 0 ? between : 0);
		group_add(groups, &count, leg->cut[i], 1);
	}
	group_add(groups, &count, section, leg->whole - before - between);
	return count;
}

/* ---- Legs that end at gates ------------------------------------------------------------------ */

/* The spots of all posts of gates. */
struct gate_spots {
	struct spot *list; /* in reading order */
	size_t count;
};

static int compare_spots(const void *a, const void *b)
{
	return spot_compare(a, b);
}

static struct gate_spots gate_spots(const struct fencing *fencing)
{
	struct gate_spots spots = { memory_new(2 * (size_t)fencing->gate_count,
		sizeof *spots.list), 0 };

	for (int i = 0; i < fencing->gate_count; i++) {
		if (fencing->gates[i].length == 0)
			continue;
		spots.list[spots.count++] = fencing->gates[i].from;
		spots.list[spots.count++] = fencing->gates[i].to;
	}
	sort(spots.list, spots.count, sizeof *spots.list, compare_spots);
	return spots;
}

static bool is_at_gate(const struct gate_spots *spots, struct spot at)
{
	return spots->count > 0 &&
		bsearch(&at, spots->list, spots->count, sizeof at, compare_spots);
}

void panels_lay(const struct fencing *fencing, struct fence_leg *legs, struct mirror mirror)
{
	struct gate_spots spots = gate_spots(fencing);

	for (int i = 0; i < fencing->leg_count && !stop_asked(); i++) {
		legs[i].at_gate[0] = is_at_gate(&spots, legs[i].from);
		legs[i].at_gate[1] = is_at_gate(&spots, legs[i].to);
		panels_divide(&legs[i], fencing, mirror_leg_lead(&mirror, legs[i].on));
	}
	free(spots.list);
}

/* ---- Cutting --------------------------------------------------------------------------------- */

/* The leaves of all gates, widest first, equal ones joined; leaves_count of them. */
static struct batch *collect_leaves(struct fencing *fencing, struct arena *arena)
{
	struct batch *leaves = arena_new(arena, (size_t)fencing->gate_count, sizeof *leaves);
	size_t count = 0;

	for (int i = 0; i < fencing->gate_count; i++)
		if (fencing->gates[i].leaves > 0)
			leaves[count++] = (struct batch){ fencing->gates[i].leaf,
				fencing->gates[i].leaves };
	fencing->leaves_count = (int)batches_join(leaves, count);
	return leaves;
}

static struct batch *collect_pieces(struct fencing *fencing, struct arena *arena, nm post)
{
	struct batch *pieces = arena_new(arena, 2 * (size_t)fencing->leg_count, sizeof *pieces);

	for (int i = 0; i < fencing->leg_count && !stop_asked(); i++) {
		const struct fence_leg *leg = &fencing->legs[i];

		fencing->panels_whole += leg->whole;
		for (int j = 0; j < leg->cut_count; j++)
			pieces[fencing->panel_pieces++] = (struct batch){ leg->cut[j] - post, 1 };
	}
	return pieces;
}

void panels_cut(struct fencing *fencing, struct arena *arena)
{
	const struct block *fence = &fencing->fence->block;
	bool is_offcut = block_number(fence, FENCE_LEAF_FROM) == LEAF_OFFCUT;
	struct batch *pieces = collect_pieces(fencing, arena, fencing->post);
	struct batch *extras = collect_leaves(fencing, arena);
	struct fence_leaves *leaves = arena_new(arena, (size_t)fencing->leaves_count,
		sizeof *leaves);
	struct saw saw;

	fencing->panel = fencing->section - fencing->post;
	fencing->leaves = leaves;
	saw = (struct saw){ fencing->panel, fencing->kerf, fencing->fit };
	for (int i = 0; i < fencing->leaves_count; i++)
		leaves[i] = (struct fence_leaves){ extras[i].place, extras[i].count, 0 };
	fencing->cuts = packing_cut_with(arena, &saw,
		&(struct pieces){ pieces, (size_t)fencing->panel_pieces },
		&(struct pieces){ extras, is_offcut ? (size_t)fencing->leaves_count : 0 },
		&fencing->cut_count);
	for (int i = 0; i < fencing->leaves_count; i++)
		leaves[i].from_offcuts = leaves[i].count - extras[i].count;
	for (int i = 0; i < fencing->cut_count; i++)
		fencing->panels_cut += fencing->cuts[i].blocks;
	fencing->panels_bought = fencing->panels_whole + fencing->panels_cut;
}
