#include "takeoff/watering/bed_header.h"
#include "base/memory.h"
#include "base/number.h"
#include "base/stop.h"

#include <stdlib.h>

/* One chord of a slab. */
struct piece {
	int slab, chord;
};

struct finding {
	const struct slabs *ground;
	struct arena *arena;
	struct header_branch *branches;
	size_t count, capacity;
	int *first;          /* by slab: the number of its first piece */
	int *met;            /* by piece: the branch that crosses it; -1: none so far */
	struct piece *queue; /* those that are met, in the order that they were */
	int queued;
};

static nm apart(nm a, nm b)
{
	return a < b ? b - a : a - b;
}

static void widen(struct chord *chord, nm at)
{
	chord->from = nm_least(chord->from, at);
	chord->to = nm_most(chord->to, at);
}

static const struct chord *chord_of(const struct finding *finding, struct piece piece)
{
	return &finding->ground->list[piece.slab].chords[piece.chord];
}

static int *met_at(const struct finding *finding, struct piece piece)
{
	return &finding->met[finding->first[piece.slab] + piece.chord];
}

static void meet(struct finding *finding, struct piece piece, int branch)
{
	*met_at(finding, piece) = branch;
	finding->queue[finding->queued++] = piece;
}

/* What both have, from < to; false: nothing. */
static bool overlap(const struct chord *a, const struct chord *b, struct chord *out)
{
	*out = (struct chord){ nm_most(a->from, b->from), nm_least(a->to, b->to) };
	return out->from < out->to;
}

/* The chord whose part within `wide` is nearest to what is aimed at; -1: none has one. It is the
 * one there or one beside it. */
static int chord_towards(const struct slab *slab, const struct chord *wide, nm aim)
{
	int there = slab_chord_before(slab, chord_nearest(wide, aim)), best = -1;
	nm nearest = INT64_MAX;

	for (int i = there > 0 ? there - 1 : 0; i < slab->count && i <= there + 1; i++) {
		struct chord part;

		if (overlap(&slab->chords[i], wide, &part) &&
			apart(chord_nearest(&part, aim), aim) < nearest) {
			nearest = apart(chord_nearest(&part, aim), aim);
			best = i;
		}
	}
	return best;
}

/* ---- Across ---------------------------------------------------------------------------------- */

/* Goes on from slab to slab as far as there is ground that none has met yet, over a stretch that
 * one has met at the most. Returns where along all of that can be met. */
static struct chord go_across(struct finding *finding, int slab, int step, struct chord wide,
	nm aim)
{
	struct chord kept = wide;
	int over = 0;

	for (slab += step; slab >= 0 && slab < finding->ground->count && over < 2; slab += step) {
		struct piece piece = { slab, chord_towards(&finding->ground->list[slab], &wide,
			aim) };

		if (piece.chord < 0 || stop_asked())
			break;
		overlap(&wide, chord_of(finding, piece), &wide);
		if (*met_at(finding, piece) >= 0) {
			over++;
			continue;
		}
		meet(finding, piece, (int)finding->count - 1);
		kept = wide;
		over = 0;
	}
	return kept;
}

/* From where a branch goes on along the line across at `across` to what is within `wide`: from
 * where the one before it goes across, or from as near as that lies along there already. */
static nm leaves_at(const struct header_branch *from, nm across, const struct chord *wide)
{
	struct chord run = { from->at, from->at };

	if (across == from->leaves.across)
		widen(&run, from->leaves.along);
	return chord_nearest(&run, chord_nearest(wide, from->at));
}

static struct header_branch *branch_add(struct finding *finding, int from, struct bed_point leaves)
{
	finding->branches = arena_grow(finding->arena, finding->branches, finding->count,
		&finding->capacity, sizeof *finding->branches);
	finding->branches[finding->count] = (struct header_branch){ from, leaves, 0,
		{ leaves.across, leaves.across } };
	return &finding->branches[finding->count++];
}

/* ---- Branches -------------------------------------------------------------------------------- */

/* Along one way from where a piece is crossed: branches to all that is not met in the slab beside
 * it, each from the one before. */
static void lead_along(struct finding *finding, struct piece piece, int step, int towards)
{
	const struct slab *slab = &finding->ground->list[piece.slab];
	struct piece next = { piece.slab + step, 0 };
	nm across = step > 0 ? slab->to : slab->from;
	int from = *met_at(finding, piece);
	struct chord wide;

	next.chord = slab_chord_before(&finding->ground->list[next.slab],
		finding->branches[from].at);
	for (; next.chord >= 0 && next.chord < finding->ground->list[next.slab].count;
		next.chord += towards) {
		struct header_branch *branch;
		nm aim;

		if (!overlap(chord_of(finding, piece), chord_of(finding, next), &wide) &&
			(towards > 0 ? wide.from >= slab->chords[piece.chord].to :
			wide.to <= slab->chords[piece.chord].from))
			break;
		if (wide.from >= wide.to || *met_at(finding, next) >= 0)
			continue;
		aim = leaves_at(&finding->branches[from], across, &wide);
		branch = branch_add(finding, from, (struct bed_point){ aim, across });
		from = (int)finding->count - 1;
		meet(finding, next, from);
		wide = go_across(finding, next.slab, step, wide, aim);
		branch->at = chord_nearest(&wide, aim);
	}
}

static void lead_on(struct finding *finding, struct piece piece)
{
	for (int step = -1; step <= 1; step += 2) {
		if (piece.slab + step < 0 || piece.slab + step >= finding->ground->count)
			continue;
		lead_along(finding, piece, step, -1);
		lead_along(finding, piece, step, 1);
	}
}

/* ---- Coming in ------------------------------------------------------------------------------- */

static struct piece piece_nearest(const struct slabs *ground, struct bed_point to,
	struct bed_point *at)
{
	struct piece nearest = { 0, 0 };
	nm least_way = INT64_MAX;

	for (int i = 0; i < ground->count && !stop_asked(); i++) {
		const struct slab *slab = &ground->list[i];
		const struct chord across = { slab->from, slab->to };

		for (int j = 0; j < slab->count; j++) {
			struct bed_point here = { chord_nearest(&slab->chords[j], to.along),
				chord_nearest(&across, to.across) };
			nm way = apart(here.along, to.along) + apart(here.across, to.across);

			if (way >= least_way)
				continue;
			least_way = way;
			nearest = (struct piece){ i, j };
			*at = here;
		}
	}
	return nearest;
}

/* The first branch goes across at the nearer end of the chord that the header comes in at; step:
 * the way that it is led first. What is met that way says where the rest is met. */
static void come_in(struct finding *finding, struct bed_point comes_in, int step)
{
	struct bed_point at = comes_in;
	struct piece piece = piece_nearest(finding->ground, comes_in, &at);
	struct chord wide = *chord_of(finding, piece);
	nm aim = at.along - wide.from <= wide.to - at.along ? wide.from : wide.to;
	struct header_branch *branch = branch_add(finding, -1, at);

	meet(finding, piece, 0);
	wide = go_across(finding, piece.slab, step, wide, aim);
	wide = go_across(finding, piece.slab, -step, wide, aim);
	branch->at = chord_nearest(&wide, aim);
}

/* ---- Lines ----------------------------------------------------------------------------------- */

/* Of a line on the border of two slabs the first: it is met where that one is. */
static int branch_of(const struct finding *finding, const struct drip_line *line)
{
	const struct slabs *ground = finding->ground;
	struct piece piece = { slab_at(ground, line->across), -1 };

	piece.chord = chord_towards(&ground->list[piece.slab], &line->chord, line->chord.from);
	if (piece.chord < 0)
		piece.chord = chord_towards(&ground->list[++piece.slab], &line->chord,
			line->chord.from);
	return *met_at(finding, piece);
}

static void join_lines(const struct finding *finding, struct bed_header *out,
	const struct drip *drip)
{
	int *of_lines = arena_new(finding->arena, (size_t)drip->count, sizeof *of_lines);

	for (int i = 0; i < drip->count && !stop_asked(); i++) {
		of_lines[i] = branch_of(finding, &drip->lines[i]);
		widen(&finding->branches[of_lines[i]].across, drip->lines[i].across);
	}
	for (size_t i = 1; i < finding->count; i++)
		widen(&finding->branches[finding->branches[i].from].across,
			finding->branches[i].leaves.across);
	out->of_lines = of_lines;
	out->branches = finding->branches;
	out->count = (int)finding->count;
}

/* ---- Finding --------------------------------------------------------------------------------- */

static struct finding finding_begin(struct arena *arena, const struct slabs *ground)
{
	int *first = memory_new((size_t)ground->count, sizeof *first), pieces = 0;
	struct finding finding = { .ground = ground, .arena = arena, .first = first };

	for (int i = 0; i < ground->count; i++) {
		first[i] = pieces;
		pieces += ground->list[i].count;
	}
	finding.met = memory_new((size_t)pieces, sizeof *finding.met);
	finding.queue = memory_new((size_t)pieces, sizeof *finding.queue);
	for (int i = 0; i < pieces; i++)
		finding.met[i] = -1;
	return finding;
}

static struct bed_header led(struct arena *arena, const struct drip *drip,
	struct bed_point comes_in, int step)
{
	struct finding finding = finding_begin(arena, &drip->ground);
	struct bed_header header = { .comes_in = comes_in };

	come_in(&finding, comes_in, step);
	for (int i = 0; i < finding.queued && !stop_asked(); i++)
		lead_on(&finding, finding.queue[i]);
	if (!stop_asked())
		join_lines(&finding, &header, drip);
	free(finding.first);
	free(finding.met);
	free(finding.queue);
	return header;
}

static struct bed_point turned(const struct slabs *ground, const struct spot *spot)
{
	return ground->is_upright ? (struct bed_point){ spot->y, spot->x } :
		(struct bed_point){ spot->x, spot->y };
}

void bed_header_find(struct bed_header *out, struct arena *arena, const struct drip *drip,
	const struct spot *comes_in)
{
	struct bed_header up;
	struct bed_point from;

	*out = (struct bed_header){ .count = 0 };
	if (drip->count == 0 || stop_asked())
		return;
	from = comes_in ? turned(&drip->ground, comes_in) :
		(struct bed_point){ drip->lines[0].chord.from, drip->lines[0].across };
	*out = led(arena, drip, from, 1);
	up = led(arena, drip, from, -1);
	if (bed_header_tube(&up, drip, 0, drip->count).length <
		bed_header_tube(out, drip, 0, drip->count).length)
		*out = up;
}

void bed_header_stretches(const struct bed_header *header, void (*each)(void *data,
	struct bed_point from, struct bed_point to), void *data)
{
	const struct bed_point in = header->comes_in;

	for (int i = 0; i < header->count && !stop_asked(); i++) {
		const struct header_branch *branch = &header->branches[i];

		if (i == 0) {
			struct bed_point turn = { branch->leaves.along, in.across };

			each(data, in, turn);
			each(data, turn, branch->leaves);
		}
		each(data, branch->leaves,
			(struct bed_point){ branch->at, branch->leaves.across });
		each(data, (struct bed_point){ branch->at, branch->across.from },
			(struct bed_point){ branch->at, branch->across.to });
	}
}

/* ---- Counting -------------------------------------------------------------------------------- */

/* What of a branch some lines need. */
struct need {
	struct chord along, across; /* from > to: nothing */
};

static const struct chord NOTHING = { INT64_MAX, INT64_MIN };

static nm length_of(const struct chord *chord)
{
	return chord->from < chord->to ? chord->to - chord->from : 0;
}

/* It is needed as far as that point, on its way along or across. */
static void need_to(struct need *need, const struct header_branch *branch, struct bed_point to)
{
	widen(&need->along, branch->leaves.along);
	if (to.across == branch->leaves.across) {
		widen(&need->along, to.along);
		return;
	}
	widen(&need->along, branch->at);
	widen(&need->across, branch->leaves.across);
	widen(&need->across, to.across);
}

/* An end of a line that is met there is no free one. */
static void add_line(struct bed_tube *tube, const struct header_branch *branch,
	const struct drip_line *line)
{
	bool is_between = line->chord.from < branch->at && branch->at < line->chord.to;

	tube->tees += is_between ? 2 : 1;
	tube->ends += is_between ? 2 : 1;
}

struct bed_tube bed_header_tube(const struct bed_header *header, const struct drip *drip, int first,
	int lines)
{
	struct need *needs = memory_new((size_t)header->count, sizeof *needs);
	struct bed_tube tube = { 0, 0, 0 };

	for (int i = 0; i < header->count; i++)
		needs[i] = (struct need){ NOTHING, NOTHING };
	for (int i = first; i < first + lines && header->count > 0; i++) {
		int of = header->of_lines[i];

		need_to(&needs[of], &header->branches[of], (struct bed_point){
			header->branches[of].at, drip->lines[i].across });
		add_line(&tube, &header->branches[of], &drip->lines[i]);
	}
	for (int i = header->count - 1; i >= 0; i--) {
		const struct header_branch *branch = &header->branches[i];

		if (needs[i].along.from > needs[i].along.to)
			continue;
		if (branch->from >= 0) {
			need_to(&needs[branch->from], &header->branches[branch->from],
				branch->leaves);
			tube.tees++;
		}
		tube.length += length_of(&needs[i].along) + length_of(&needs[i].across);
	}
	free(needs);
	return tube;
}
