#include "takeoff/walls/side.h"
#include "base/hash.h"
#include "base/number.h"

#include <assert.h>
#include <string.h>

/* Whose bond it is, as numbers: equal keys, equal bonds. */
enum { KEY_NUMBERS = 9 };
struct key {
	int64_t numbers[KEY_NUMBERS];
};

struct page {
	struct key key;
	struct bond bond;
	bool is_used, has_bond, is_laid; /* is_laid: the bond has its pieces */
};

/* A hash table, open addresses, at most half full. */
struct side_book {
	struct arena *arena;
	struct page *pages;
	size_t count, capacity; /* capacity: a power of two */
};

enum { PAGES_AT_FIRST = 64 };

/* ---- Runs ------------------------------------------------------------------------------------ */

/* How far a run reaches past its corner's outer edge into the next side, or is held back by it:
 * convex going through 0, convex butting -w, reflex going through w, reflex butting 0. */
static nm reach(bool is_reflex, bool is_through, nm depth)
{
	if (is_reflex)
		return is_through ? depth : 0;
	return is_through ? 0 : -depth;
}

struct bond_run side_run(const struct side *side, nm depth, bool swapped)
{
	bool first = side->first_through != swapped, last = side->last_through != swapped;
	nm before = reach(side->first_reflex, first, depth);
	nm after = reach(side->last_reflex, last, depth);

	return (struct bond_run){
		.from = -before,
		.length = before + side->length + after,
		.first_open = side->first_reflex || !first,
		.last_open = side->last_reflex || !last,
	};
}

struct bond_run side_cap_run(const struct capped *capped)
{
	struct side side = capped->wall;

	side.first_through = capped->first_through;
	side.last_through = capped->last_through;
	return side_run(&side, capped->cap.depth, false);
}

/* ---- Pages ----------------------------------------------------------------------------------- */

static int64_t bits_of(const struct side *side)
{
	return side->first_reflex | side->last_reflex << 1 | side->first_through << 2 |
		side->last_through << 3 | side->mirrored << 4;
}

static struct key key_of(const struct side *side, const struct masonry *masonry)
{
	return (struct key){ { bits_of(side), side->length, masonry->length, masonry->depth,
		masonry->shortest, masonry->courses } };
}

static struct key cap_key_of(const struct capped *capped)
{
	struct key key = key_of(&capped->wall, &capped->masonry);

	key.numbers[0] |= 1 << 5 | capped->first_through << 6 | capped->last_through << 7;
	key.numbers[KEY_NUMBERS - 3] = capped->cap.length;
	key.numbers[KEY_NUMBERS - 2] = capped->cap.depth;
	key.numbers[KEY_NUMBERS - 1] = capped->cap.shortest;
	return key;
}

/* The key's page, or the free one where it belongs. */
static struct page *find_page(const struct side_book *book, const struct key *key)
{
	uint64_t hash = hash_bytes(HASH_EMPTY, key, sizeof *key);

	for (size_t at = (size_t)(hash ^ hash >> 32);; at++) {
		struct page *page = &book->pages[at & (book->capacity - 1)];

		if (!page->is_used || memcmp(&page->key, key, sizeof *key) == 0)
			return page;
	}
}

static void set_capacity(struct side_book *book, size_t capacity)
{
	struct side_book old = *book;

	book->capacity = capacity;
	book->pages = arena_new(book->arena, capacity, sizeof *book->pages);
	for (size_t i = 0; i < old.capacity; i++)
		if (old.pages[i].is_used)
			*find_page(book, &old.pages[i].key) = old.pages[i];
}

struct side_book *side_book_new(struct arena *arena)
{
	struct side_book *book = arena_new(arena, 1, sizeof *book);

	book->arena = arena;
	set_capacity(book, PAGES_AT_FIRST);
	return book;
}

/* The page of a key; a new one is empty. */
static struct page *page_of(struct side_book *book, const struct key *key, bool *is_new)
{
	struct page *page = find_page(book, key);

	*is_new = !page->is_used;
	if (!*is_new)
		return page;
	if (2 * (book->count + 1) > book->capacity) {
		set_capacity(book, 2 * book->capacity);
		page = find_page(book, key);
	}
	*page = (struct page){ .key = *key, .is_used = true };
	book->count++;
	return page;
}

/* ---- Bonds ----------------------------------------------------------------------------------- */

static struct bond_rule rule_of(const struct masonry *masonry, bool mirrored)
{
	return (struct bond_rule){ .block = masonry->length, .shortest = masonry->shortest,
		.corner = bond_corner(masonry->length, masonry->depth),
		.enough = bond_enough(masonry->length, masonry->depth),
		.odd_courses = (masonry->courses + 1) / 2, .even_courses = masonry->courses / 2,
		.mirrored = mirrored };
}

/* False where a run is too short. The pieces are in the arena. */
static bool lay_side(struct bond *out, struct arena *arena, const struct side *side,
	const struct masonry *masonry)
{
	struct bond_run odd = side_run(side, masonry->depth, false);
	struct bond_run even = side_run(side, masonry->depth, true);
	struct bond_rule rule = rule_of(masonry, side->mirrored);

	return bond_lay(out, arena, &odd, masonry->courses > 1 ? &even : NULL, &rule);
}

const struct bond *side_bond(struct side_book *book, const struct side *side,
	const struct masonry *masonry)
{
	const struct key key = key_of(side, masonry);
	struct arena unused = ARENA_EMPTY;
	bool is_new;
	struct page *page = page_of(book, &key, &is_new);

	if (is_new) {
		page->has_bond = lay_side(&page->bond, &unused, side, masonry);
		page->bond.odd.pieces = page->bond.even.pieces = NULL;
		arena_clear(&unused);
	}
	return page->has_bond ? &page->bond : NULL;
}

const struct bond *side_lay(struct side_book *book, const struct side *side,
	const struct masonry *masonry)
{
	const struct key key = key_of(side, masonry);
	bool is_new;
	struct page *page = page_of(book, &key, &is_new);

	if (!page->is_laid)
		page->is_laid = page->has_bond = lay_side(&page->bond, book->arena, side,
			masonry);
	assert(page->is_laid);
	return &page->bond;
}

static bool lay_cap(struct bond *out, struct arena *arena, const struct capped *capped,
	const struct bond *wall)
{
	const struct masonry *masonry = &capped->masonry;
	bool on_even = masonry->courses % 2 == 0;
	struct bond_run below_run = side_run(&capped->wall, masonry->depth, on_even);
	struct bond_run run = side_cap_run(capped);
	struct bond_rule rule = rule_of(&capped->cap, capped->wall.mirrored);
	nm apart = bond_quarters(nm_least(masonry->length, rule.block), 1);
	struct arena joints = ARENA_EMPTY;
	struct bond_below below = bond_below(&joints, &below_run,
		on_even ? &wall->even : &wall->odd, apart);
	bool is_laid = bond_lay_upon(out, arena, &run, &rule, &below);

	arena_clear(&joints);
	return is_laid;
}

const struct bond *side_cap(struct side_book *book, const struct capped *capped)
{
	const struct bond *wall = side_lay(book, &capped->wall, &capped->masonry);
	const struct bond of_wall = *wall; /* the book may grow */
	const struct key key = cap_key_of(capped);
	bool is_new;
	struct page *page = page_of(book, &key, &is_new);

	if (is_new)
		page->is_laid = page->has_bond = lay_cap(&page->bond, book->arena, capped,
			&of_wall);
	return page->has_bond ? &page->bond : NULL;
}
