#include "takeoff/walls/bond_layout.h"

#include <assert.h>
#include <stdlib.h>

static void add_joints(struct bond_layout *layout, nm first, int64_t count)
{
	if (count > 0)
		layout->joints[layout->joint_count++] = (struct joint_row){ first, count };
}

/* Joints are a block apart until a cut piece shifts them: one row up to the rest, one after
 * each of its pieces. The last joint is the run's end and is left out. */
static void find_joints(struct bond_layout *layout, const struct bond_run *run, nm block)
{
	nm at = run->from + layout->first;
	nm end = run->from + run->length;
	int64_t wholes = layout->before;

	layout->joint_count = 0;
	for (int i = 0; i < 3; i++) {
		bool starts_with_joint = at > run->from;
		nm first = starts_with_joint ? at : at + block;
		int64_t count = wholes + (starts_with_joint ? 1 : 0);

		at += wholes * block;
		add_joints(layout, first, at == end ? count - 1 : count);
		if (i == 2 || layout->rest[i] == 0)
			break;
		at += layout->rest[i];
		wholes = i == 1 || layout->rest[1] == 0 ? layout->after : 0;
	}
	assert(at == end);
}

bool bond_layout_make(struct bond_layout *out, const struct bond_run *run,
	const struct bond_rule *rule, nm first, bool shared)
{
	nm left = run->length - first;
	int64_t whole = left / rule->block;
	nm rest = left % rule->block;

	if (left < 0)
		return false;
	*out = (struct bond_layout){ .first = first, .rest = { rest, 0 } };
	if (shared || (rest > 0 && rest < rule->shortest)) {
		if (whole == 0)
			return false;
		whole--;
		rest += rule->block;
		out->rest[0] = rest - rest / 2;
		out->rest[1] = rest / 2;
	}
	out->before = whole;
	out->cut = (first > 0) + (out->rest[0] > 0) + (out->rest[1] > 0);
	find_joints(out, run, rule->block);
	return true;
}

void bond_layout_move(struct bond_layout *layout, const struct bond_run *run, nm block,
	int64_t before)
{
	layout->after += layout->before - before;
	layout->before = before;
	assert(layout->after >= 0);
	if (layout->rest[0] == 0) {
		layout->before += layout->after;
		layout->after = 0;
	}
	find_joints(layout, run, block);
}

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

static void add_pieces(nm *pieces, int *count, nm piece, int64_t times)
{
	for (int64_t i = 0; i < times; i++)
		pieces[(*count)++] = piece;
}

const nm *bond_layout_pieces(const struct bond_layout *layout, nm block, struct arena *arena,
	int *count)
{
	int64_t most = layout->before + layout->after + 3;
	nm *pieces = arena_new(arena, (size_t)most, sizeof *pieces);

	*count = 0;
	add_pieces(pieces, count, layout->first, layout->first > 0);
	add_pieces(pieces, count, block, layout->before);
	add_pieces(pieces, count, layout->rest[0], layout->rest[0] > 0);
	add_pieces(pieces, count, layout->rest[1], layout->rest[1] > 0);
	add_pieces(pieces, count, block, layout->after);
	return pieces;
}
