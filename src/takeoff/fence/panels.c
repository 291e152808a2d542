#include "takeoff/fence/panels.h"
#include "base/stop.h"


void panels_divide(struct fence_leg *leg, nm section, nm post)
{
	nm rest = leg->length % section;

	leg->whole = leg->length / section;
	leg->cut_count = 0;
	if (leg->length <= post || rest == 0)
		return;
	if (rest >= PANEL_REST_LEAST || leg->whole == 0) {
		leg->cut[leg->cut_count++] = rest;
		return;
	}
	leg->whole--;
	rest += section;
	leg->cut[leg->cut_count++] = rest - rest / 2;
	leg->cut[leg->cut_count++] = rest / 2;
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
	nm post = block_length(fence, FENCE_POST);
	struct batch *pieces = collect_pieces(fencing, arena, post);
	struct batch *extras = collect_leaves(fencing, arena);
	struct fence_leaves *leaves = arena_new(arena, (size_t)fencing->leaves_count,
		sizeof *leaves);
	struct saw saw;

	fencing->panel = block_length(fence, FENCE_SECTION) - post;
	fencing->leaves = leaves;
	saw = (struct saw){ fencing->panel, fencing->kerf, fencing->fit };
	for (int i = 0; i < fencing->leaves_count; i++)
		leaves[i] = (struct fence_leaves){ extras[i].place, extras[i].count, 0 };
	fencing->cuts = packing_cut_with(arena, &saw,
		&(struct pieces){ pieces, (size_t)fencing->panel_pieces },
		&(struct pieces){ extras, (size_t)fencing->leaves_count }, &fencing->cut_count);
	for (int i = 0; i < fencing->leaves_count; i++)
		leaves[i].from_offcuts = leaves[i].count - extras[i].count;
	for (int i = 0; i < fencing->cut_count; i++)
		fencing->panels_cut += fencing->cuts[i].blocks;
	fencing->panels_bought = fencing->panels_whole + fencing->panels_cut;
}
