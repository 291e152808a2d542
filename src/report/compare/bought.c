#include "report/compare/bought.h"
#include "report/words/item_words.h"

#include <math.h>
#include <string.h>

struct collecting {
	struct differing differing; /* first */
	struct comparison *comparison;
	struct bought_changes changes;
};

const struct goods_row *bought_goods(const struct bought_change *change)
{
	return change->versions[NEW] ? change->versions[NEW] : change->versions[OLD];
}

const char *bought_change_words(const struct report *report, const struct bought_change *change)
{
	return change->packs ? change->packs : !*change->how ? change->amount :
		say(report, "%s, %s", change->amount, change->how);
}

static bool are_one_pack(const struct pack *a, const struct pack *b)
{
	return a->kind == b->kind && a->unit == b->unit && a->size == b->size &&
		strcmp(a->words, b->words) == 0;
}

/* "3 bags of 2 cu ft", where both versions have one kind of pack; NULL. */
static const char *packs_words(const struct report *report, const struct bought_change *change)
{
	const struct goods_row *old = change->versions[OLD], *new = change->versions[NEW];
	const struct bought *before = old ? old->bought : NULL, *now = new ? new->bought : NULL;
	struct bought more;

	if ((!before && !now) || (old && !before) || (new && !now) ||
		(old && new && !are_one_pack(before->pack, now->pack)))
		return NULL;
	more = (struct bought){ .pack = now ? now->pack : before->pack,
		.packs = (now ? now->packs : 0) - (before ? before->packs : 0) };
	/* What costs least may be more packs than are needed. */
	if (fabs(more.packs) < 1e-9 || (more.packs > 0) != (change->more > 0))
		return NULL;
	more.packs = fabs(more.packs);
	return bought_words(report, &more);
}

static const char *amount_words(const struct comparison *comparison,
	const struct bought_change *change, const struct leaf *order)
{
	const struct leaf_words words = leaf_say(comparison, order, change->versions[OLD],
		change->versions[NEW]);

	if (change->versions[OLD] && change->versions[NEW])
		return words.difference + strspn(words.difference, "+-");
	return words.versions[change->versions[NEW] ? NEW : OLD];
}

static const char *how_words(const struct bought_change *change)
{
	const struct goods_row *old = change->versions[OLD], *new = change->versions[NEW];

	if ((old && old->is_shared) || (new && new->is_shared))
		return "bought with others";
	return old && new && strcmp(old->packs, new->packs) == 0 ? "within the same order" : "";
}

static void found(struct differing *differing, const struct difference *difference)
{
	struct collecting *collecting = (struct collecting *)differing;
	struct bought_changes *changes = &collecting->changes;
	struct comparison *comparison = collecting->comparison;
	struct arena *arena = comparison->arena;
	struct bought_change change = {
		.versions = { difference->rows[OLD], difference->rows[NEW] } };
	const char *packs;

	if (!difference->leaf || strncmp(difference->leaf->key, "order", 5) != 0)
		return;
	change.more = (change.versions[NEW] ? goods_order(change.versions[NEW]) : 0) -
		(change.versions[OLD] ? goods_order(change.versions[OLD]) : 0);
	change.amount = arena_print(arena, "%s",
		amount_words(comparison, &change, difference->leaf));
	packs = packs_words(&comparison->versions[NEW], &change);
	change.packs = packs ? arena_print(arena, "%s", packs) : NULL;
	change.how = how_words(&change);
	changes->list = arena_grow(arena, changes->list, changes->count, &changes->capacity,
		sizeof *changes->list);
	changes->list[changes->count++] = change;
}

struct bought_changes bought_changes(struct comparison *comparison)
{
	struct collecting collecting = { .differing.found = found, .comparison = comparison };
	struct rows versions[VERSIONS];

	for (int i = 0; i < VERSIONS; i++)
		versions[i] = goods_rows(comparison->arena, &comparison->versions[i]);
	differences_of_rows(comparison, &collecting.differing, "items", versions);
	return collecting.changes;
}
