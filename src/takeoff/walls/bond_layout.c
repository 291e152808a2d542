#include "takeoff/walls/bond_layout.h"
#include "base/number.h"

#include <assert.h>
#include <stdlib.h>

nm bond_quarters(nm block, int count)
{
	nm one = (block + 3) / 4;

	return count == 0 ? 0 : count == 1 ? one : count == 2 ? block / 2 : block - one;
}

static void add_joints(struct bond_layout *layout, nm first, int64_t count)
{
	if (count > 0)
		layout->joints[layout->joint_count++] = (struct joint_row){ first, count };
}

/* Joints are a block apart until a cut piece shifts them: one row up to each cut piece, one
 * behind the last. The last joint is the run's end and is left out. */
static void find_joints(struct bond_layout *layout, const struct bond_run *run, nm block)
{
	nm at = run->from, end = run->from + run->length;

	layout->joint_count = 0;
	for (int i = 0; i <= layout->cut; i++) {
		int64_t wholes = layout->wholes[i];
		bool starts_with_joint = at > run->from;
		nm first = starts_with_joint ? at : at + block;
		int64_t count = wholes + (starts_with_joint ? 1 : 0);

		at += wholes * block;
		add_joints(layout, first, at == end ? count - 1 : count);
		if (i < layout->cut)
			at += layout->pieces[i];
	}
	assert(at == end);
}

static void add_cut(struct bond_layout *layout, nm piece)
{
	layout->pieces[layout->cut++] = piece;
}

bool bond_layout_make(struct bond_layout *out, const struct bond_run *run,
	const struct bond_rule *rule, struct bond_start start, bool shared)
{
	nm left = run->length - start.piece - start.lead * rule->block;
	int64_t whole = left / rule->block;
	nm rest = left % rule->block;

	if (left < 0)
		return false;
	shared = shared || (rest > 0 && rest < rule->shortest);
	if (shared && whole-- == 0)
		return false;
	*out = (struct bond_layout){ .cut = 0 };
	if (start.piece > 0) {
		out->wholes[0] = start.lead;
		add_cut(out, start.piece);
	}
	out->rest = out->cut;
	out->wholes[out->rest] += whole;
	if (shared) {
		rest += rule->block;
		add_cut(out, rest - rest / 2);
		add_cut(out, rest / 2);
	} else if (rest > 0) {
		add_cut(out, rest);
	}
	find_joints(out, run, rule->block);
	return true;
}

int64_t bond_layout_movable(const struct bond_layout *layout)
{
	return layout->rest == layout->cut ? 0 :
		layout->wholes[layout->rest] + layout->wholes[layout->cut];
}

void bond_layout_move(struct bond_layout *layout, const struct bond_run *run, nm block,
	int64_t before)
{
	int64_t whole = bond_layout_movable(layout);

	assert(before >= 0 && before <= whole);
	if (layout->rest == layout->cut)
		return;
	layout->wholes[layout->rest] = before;
	layout->wholes[layout->cut] = whole - before;
	find_joints(layout, run, block);
}

void bond_layout_mirrored(struct bond_layout *out, const struct bond_run *run, nm block,
	int64_t outer, nm piece, bool single)
{
	*out = (struct bond_layout){ .wholes[0] = outer };
	if (piece > 0)
		add_cut(out, piece);
	if (piece > 0 && !single) {
		out->wholes[1] = (run->length - 2 * piece) / block - 2 * outer;
		add_cut(out, piece);
	}
	if (out->cut > 0)
		out->wholes[out->cut] = outer;
	find_joints(out, run, block);
}

/* ---- Heads ----------------------------------------------------------------------------------- */

/* The piece at an end; 0: a whole block. */
static nm cut_at_first(const struct bond_layout *layout)
{
	return layout->wholes[0] > 0 || layout->cut == 0 ? 0 : layout->pieces[0];
}

static nm cut_at_last(const struct bond_layout *layout)
{
	return layout->wholes[layout->cut] > 0 || layout->cut == 0 ? 0 :
		layout->pieces[layout->cut - 1];
}

static nm short_by(nm piece, nm least)
{
	return piece > 0 ? nm_most(least - piece, 0) : 0;
}

nm bond_layout_short(const struct bond_layout *layout, const struct bond_run *run, nm block,
	nm corner)
{
	nm first = run->first_open ? 0 : cut_at_first(layout);
	nm last = run->last_open ? 0 : cut_at_last(layout);
	bool is_same = first == run->length && last == first;

	return short_by(first, corner) + short_by(last, corner) + (is_same ? block - first : 0);
}

int bond_layout_cut_heads(const struct bond_layout *layout, const struct bond_run *run)
{
	return (!run->first_open && cut_at_first(layout) > 0) +
		(!run->last_open && cut_at_last(layout) > 0);
}

/* ---- Joints too close ------------------------------------------------------------------------ */

/* Only one shift of b's joints against a's, in whole blocks, can bring them so close; then all
 * joints that meet are too close, or none is. */
static int64_t close_pairs(const struct joint_row *a, const struct joint_row *b, nm block)
{
	nm off = b->first - a->first;
	int64_t shift = -off / block;
	nm gap = off + shift * block;

	if (gap > block / 2)
		gap -= block, shift--;
	else if (gap < -block / 2)
		gap += block, shift++;
	if (4 * llabs(gap) >= block)
		return 0;
	/* Joint i of a meets joint i + shift of b. */
	int64_t low = shift < 0 ? -shift : 0;
	int64_t high = a->count < b->count - shift ? a->count : b->count - shift;

	return high > low ? high - low : 0;
}

int64_t bond_layout_close_joints(const struct bond_layout *a, const struct bond_layout *b, nm block)
{
	int64_t close = 0;

	for (int i = 0; i < a->joint_count; i++)
		for (int j = 0; j < b->joint_count; j++)
			close += close_pairs(&a->joints[i], &b->joints[j], block);
	return close;
}

bool bond_layout_bonds(const struct bond_layout *a, const struct bond_layout *b, nm block)
{
	for (int i = 0; i < a->joint_count; i++)
		for (int j = 0; j < b->joint_count; j++)
			if (close_pairs(&a->joints[i], &b->joints[j], block) > 0)
				return false;
	return true;
}

int64_t bond_layout_close_ends(const struct bond_layout *layout, const struct bond_run *other,
	nm block)
{
	struct joint_row first = { other->from, other->first_open };
	struct joint_row last = { other->from + other->length, other->last_open };
	int64_t close = 0;

	for (int i = 0; i < layout->joint_count; i++)
		close += close_pairs(&layout->joints[i], &first, block) +
			close_pairs(&layout->joints[i], &last, block);
	return close;
}

/* True where a joint is too close to one of those below from *near to end - 1. *near moves on to
 * the first that is not farther behind than they must be apart: joints come in order. */
static bool is_close(const struct bond_below *below, nm joint, int *near, int end)
{
	while (*near < end && joint - below->joints[*near] >= below->apart)
		++*near;
	return *near < end && below->joints[*near] - joint < below->apart;
}

int64_t bond_layout_close_below(const struct bond_layout *layout, const struct bond_run *run,
	nm block, const struct bond_below *below)
{
	int inside = below->first_is_end, end = below->count - below->last_is_end, near = 0;
	int64_t close = run->first_open && is_close(below, run->from, &inside, end);

	for (int i = 0; i < layout->joint_count; i++)
		for (int64_t j = 0; j < layout->joints[i].count; j++)
			close += is_close(below, layout->joints[i].first + j * block, &near,
				below->count);
	return close + (run->last_open &&
		is_close(below, run->from + run->length, &inside, end));
}

/* ---- Pieces ---------------------------------------------------------------------------------- */

const nm *bond_layout_pieces(const struct bond_layout *layout, nm block, struct arena *arena,
	int *count)
{
	int64_t all = layout->cut;
	nm *pieces;

	for (int i = 0; i <= layout->cut; i++)
		all += layout->wholes[i];
	pieces = arena_new(arena, (size_t)all, sizeof *pieces);
	*count = 0;
	for (int i = 0; i <= layout->cut; i++) {
		for (int64_t j = 0; j < layout->wholes[i]; j++)
			pieces[(*count)++] = block;
		if (i < layout->cut)
			pieces[(*count)++] = layout->pieces[i];
	}
	return pieces;
}
