#include "takeoff/costs/menu.h"
#include "base/sort.h"
#include "base/stop.h"
#include "takeoff/costs/stages.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

/* Looked at in one search. */
enum { LABELS_MOST = 100000 };
/* Labels are dropped when there are so many times the width of them. */
enum { BATCH = 8 };

struct label {
	money cost;     /* of goods, and of lanes that are closed */
	double paid;    /* the same with parts of drops of open lanes */
	double bound;   /* what it must come to at least, so counted */
	double rest;    /* 0 or less: none */
	double steps;   /* of all offers */
	double taken;   /* steps of the last offer */
	size_t parent;  /* of the labels one stage before */
	struct aboard aboard[]; /* by lane; of closed ones nothing */
};

/* What of a label is kept: the way back. */
struct trace {
	double taken;
	size_t parent;
};

struct search {
	const struct kitchen *kitchen;
	const struct want *want;
	struct stages stages;
	const struct stage *stage;
	int at;                 /* its index */
	size_t stride;          /* bytes of a label */
	char *labels, *next;    /* of the stage before; of this one */
	size_t count, next_count, room, next_room;
	struct trace *traces[OFFERS_MOST]; /* by stage */
	struct mix_value best;  /* no worse ones are looked for; a surplus: at this cost all are */
	bool is_least;          /* only what is paid counts */
	int looked_at;
	bool is_cut;            /* some that might have been better were dropped */
};

static struct label *label_at(const struct search *search, char *labels, size_t i)
{
	return (struct label *)(void *)(labels + i * search->stride);
}

/* ---- Which of two is better ------------------------------------------------------------------ */

/* Below 0 where the first has more of the earlier offers. */
static int by_offers(const struct search *search, int at, struct trace a, struct trace b)
{
	int order = 0;

	if (a.parent != b.parent)
		order = by_offers(search, at - 1, search->traces[at - 1][a.parent],
			search->traces[at - 1][b.parent]);
	return order ? order : (b.taken > a.taken) - (b.taken < a.taken);
}

static bool needs_no_more(const struct search *search, const struct label *a,
	const struct label *b)
{
	const struct stage *stage = search->stage;
	int count = search->is_least ? stage->own_count : stage->open_count;

	if (fmax(a->rest, 0) > fmax(b->rest, 0))
		return false;
	for (int i = 0; i < count; i++) {
		const struct aboard *one = &a->aboard[stage->open[i]];
		const struct aboard *other = &b->aboard[stage->open[i]];

		if (one->weight > other->weight || one->volume > other->volume ||
			one->is_used > other->is_used)
			return false;
	}
	return true;
}

/* Whether whatever b can lead to, a can lead to something as good. */
static bool beats(const struct search *search, const struct label *a, const struct label *b)
{
	double more = (b->rest - a->rest) / search->want->order * 1e9;

	if (!needs_no_more(search, a, b))
		return false;
	if (search->is_least)
		return a->paid <= b->paid;
	if (a->cost > b->cost)
		return false;
	if (a->cost < b->cost)
		return true;
	if (fabs(more) >= 0.5)
		return more < 0;
	if (a->steps < b->steps || a->steps > b->steps)
		return a->steps < b->steps;
	return by_offers(search, search->at, (struct trace){ a->taken, a->parent },
		(struct trace){ b->taken, b->parent }) < 0;
}

static int by_bound(const void *one, const void *other)
{
	const struct label *a = one, *b = other;

	return (a->bound > b->bound) - (a->bound < b->bound);
}

/* Drops the labels that others beat, and those past the width. */
static void thin_out(struct search *search)
{
	size_t kept = 0;

	sort(search->next, search->next_count, search->stride, by_bound);
	for (size_t i = 0; i < search->next_count && !stop_asked(); i++) {
		const struct label *label = label_at(search, search->next, i);
		size_t j = 0;

		while (j < kept && !beats(search, label_at(search, search->next, j), label))
			j++;
		if (j < kept)
			continue;
		/* Equal bounds come in any order: one that was kept may yet be beaten. */
		for (j = 0; j < kept; j++)
			if (beats(search, label, label_at(search, search->next, j)))
				break;
		if (j == search->kitchen->width) {
			search->is_cut = true;
			break;
		}
		kept += j == kept;
		memmove(label_at(search, search->next, j), label, search->stride);
	}
	search->next_count = kept;
}

/* ---- Stage by stage -------------------------------------------------------------------------- */

/* Whether a label can lead to one that is looked for, and if not, whether those after it can. */
enum hope { HOPE, NONE, NONE_FROM_HERE };

static enum hope hope_of(const struct search *search, const struct label *label)
{
	const struct stage *stage = search->stage;
	double best = (double)search->best.cost;
	double hair = search->stages.hair + best * 1e-12;
	double least = ceil(label->bound - search->stages.rounding - hair);

	if (least > best)
		return least > best + 2 * search->stages.rounding + stage->closing_most + 1 ?
			NONE_FROM_HERE : NONE;
	if (least < best || search->best.surplus > 0 ||
		label->steps + fmax(label->rest, 0) * stage->steps_a_unit <=
		search->best.steps + 1e-6)
		return HOPE;
	return stage->is_steady && stage->closing_most <= 0 ? NONE_FROM_HERE : NONE;
}

static void close_lanes(const struct search *search, struct label *label)
{
	const struct stage *stage = search->stage;

	for (int i = 0; i < stage->closing_count; i++) {
		int lane = stage->closing[i];

		label->cost += lane_cost(&search->stages.lanes[lane], &label->aboard[lane]);
		label->aboard[lane] = NOTHING_ABOARD;
	}
}

static void set_bound(const struct search *search, struct label *label)
{
	const struct stage *stage = search->stage;

	label->paid = (double)label->cost;
	for (int i = 0; i < stage->open_count; i++)
		label->paid += stages_part_drops(&search->stages, stage->open[i],
			&label->aboard[stage->open[i]]);
	label->bound = label->paid + fmax(label->rest, 0) * stage->cost_a_unit;
}

static enum hope add(struct search *search, size_t parent, double steps)
{
	const struct stage *stage = search->stage;
	const struct offer *offer = stage->offer;
	struct label *label;
	enum hope hope;

	if (search->next_count == BATCH * search->kitchen->width)
		thin_out(search);
	search->next = memory_grow(search->next, search->next_count, &search->next_room,
		search->stride);
	label = label_at(search, search->next, search->next_count);
	memcpy(label, label_at(search, search->labels, parent), search->stride);
	label->parent = parent;
	label->taken = steps;
	label->steps += steps;
	label->cost += offer_cost(offer, steps);
	label->rest -= steps * offer->size;
	if (fabs(label->rest) <= search->want->order * 1e-12)
		label->rest = 0;
	if (offer->lane != NO_LANE)
		aboard_add(&label->aboard[offer->lane], offer->weight, offer->volume, steps);
	close_lanes(search, label);
	set_bound(search, label);
	hope = hope_of(search, label);
	search->next_count += hope == HOPE;
	search->looked_at++;
	return hope;
}

/* The labels of all numbers of steps, the most promising first. */
static void branch(struct search *search, size_t parent)
{
	const struct stage *stage = search->stage;
	const struct label *label = label_at(search, search->labels, parent);
	double top = label->rest > 0 ? offer_steps(stage->offer, label->rest) : 0;
	double first = stage->is_last || stage->is_best ? top : 0;
	double last = stage->is_last ? top : top - first, steps = first;

	for (;;) {
		enum hope hope = add(search, parent, steps);

		/* The first of the most may be too much by far, one fewer is not. */
		if (steps == last || (hope == NONE_FROM_HERE && steps < top))
			return;
		if (search->looked_at > LABELS_MOST || stop_asked()) {
			search->is_cut = true;
			add(search, parent, last);
			return;
		}
		steps += last > first ? 1 : -1;
	}
}

static void keep(struct search *search)
{
	struct trace *trace = arena_new(search->kitchen->arena, search->next_count, sizeof *trace);
	char *labels = search->labels;
	size_t room = search->room;

	for (size_t i = 0; i < search->next_count; i++) {
		const struct label *label = label_at(search, search->next, i);

		trace[i] = (struct trace){ label->taken, label->parent };
	}
	search->traces[search->at] = trace;
	search->labels = search->next;
	search->count = search->next_count;
	search->room = search->next_room;
	search->next = labels;
	search->next_room = room;
	search->next_count = 0;
}

static void run(struct search *search, const struct kitchen *kitchen, const struct want *want)
{
	struct label *first;

	search->kitchen = kitchen;
	search->want = want;
	search->stride = sizeof(struct label) +
		(size_t)kitchen->mixing->lane_count * sizeof(struct aboard);
	stages_init(&search->stages, kitchen, want);
	search->labels = memory_new(1, search->stride);
	search->room = 1;
	first = label_at(search, search->labels, 0);
	first->rest = want->order;
	for (int i = 0; i < kitchen->mixing->lane_count; i++)
		first->aboard[i] = kitchen->mixing->lanes[i].before;
	for (int i = 0; i < kitchen->shared_count; i++)
		first->aboard[kitchen->shared[i]] = NOTHING_ABOARD;
	search->count = 1;
	for (search->at = 0; search->at < search->stages.count; search->at++) {
		search->stage = &search->stages.list[search->at];
		for (size_t i = 0; i < search->count && !stop_asked(); i++)
			branch(search, i);
		thin_out(search);
		keep(search);
	}
}

/* The way to a label of the last stage. */
static struct recipe recipe_of(const struct search *search, size_t i)
{
	const struct kitchen *kitchen = search->kitchen;
	const struct label *label = label_at(search, search->labels, i);
	double *steps = arena_new(kitchen->arena, OFFERS_MOST, sizeof *steps);
	double *aboard = arena_new(kitchen->arena, (size_t)kitchen->shared_count + 1,
		sizeof *aboard);

	for (int j = 0; j < kitchen->shared_count; j++) {
		const struct aboard *by = &label->aboard[kitchen->shared[j]];

		aboard[j] = by->is_used ? by->weight : -1;
	}
	for (int at = search->stages.count - 1; at >= 0; at--) {
		struct trace trace = search->traces[at][i];

		steps[at] = trace.taken;
		i = trace.parent;
	}
	return (struct recipe){ { label->cost, mix_surplus(label->rest, search->want->order),
		label->steps }, label->paid, steps, aboard };
}

/* ---- What comes of it ------------------------------------------------------------------------ */

static struct menu menu_end(struct search *search, struct recipe *list, size_t count)
{
	free(search->labels);
	free(search->next);
	return (struct menu){ list, (int)count, search->is_cut };
}

struct menu menu_least(const struct kitchen *kitchen, const struct want *want)
{
	struct search search = { .is_least = true };
	struct recipe *least = arena_new(kitchen->arena, 1, sizeof *least);
	struct mixing alone = *kitchen->mixing;
	size_t at = 0;

	alone.wants = want;
	alone.want_count = 1;
	search.best = (struct mix_value){ mix_value(&alone).cost, 1, 0 };
	run(&search, kitchen, want);
	for (size_t i = 1; i < search.count; i++)
		if (label_at(&search, search.labels, i)->paid <
			label_at(&search, search.labels, at)->paid)
			at = i;
	if (search.count > 0)
		*least = recipe_of(&search, at);
	return menu_end(&search, least, search.count > 0);
}

static int by_steps(const void *one, const void *other)
{
	const struct recipe *a = one, *b = other;

	for (int i = 0; i < OFFERS_MOST; i++)
		if (a->steps[i] < b->steps[i] || a->steps[i] > b->steps[i])
			return a->steps[i] > b->steps[i] ? -1 : 1;
	return 0;
}

struct menu menu_of(const struct kitchen *kitchen, const struct want *want,
	const struct mix_value *limit)
{
	struct search search = { .best = *limit };
	struct recipe *list;

	run(&search, kitchen, want);
	list = arena_new(kitchen->arena, search.count, sizeof *list);
	for (size_t i = 0; i < search.count; i++)
		list[i] = recipe_of(&search, i);
	sort(list, search.count, sizeof *list, by_steps);
	return menu_end(&search, list, search.count);
}
