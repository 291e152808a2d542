#include "takeoff/walls/side.h"

#include <assert.h>

struct page {
	struct side side;
	struct masonry masonry;
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

static bool page_is_of(const struct page *page, const struct side *side,
	const struct masonry *masonry)
{
	const struct side *a = &page->side;
	const struct masonry *m = &page->masonry;

	return a->length == side->length && a->first_reflex == side->first_reflex &&
		a->last_reflex == side->last_reflex && a->first_through == side->first_through &&
		a->last_through == side->last_through && m->length == masonry->length &&
		m->depth == masonry->depth && m->shortest == masonry->shortest &&
		m->courses == masonry->courses;
}

static uint64_t mixed(uint64_t hash, uint64_t value)
{
	hash = (hash ^ value) * UINT64_C(0x9E3779B97F4A7C15);
	return hash ^ hash >> 32;
}

static uint64_t hash_of(const struct side *side, const struct masonry *masonry)
{
	unsigned corners = (unsigned)(side->first_reflex | side->last_reflex << 1 |
		side->first_through << 2 | side->last_through << 3);
	uint64_t hash = mixed((uint64_t)side->length, corners);

	hash = mixed(hash, (uint64_t)masonry->length);
	hash = mixed(hash, (uint64_t)masonry->depth);
	hash = mixed(hash, (uint64_t)masonry->shortest);
	return mixed(hash, (uint64_t)masonry->courses);
}

/* The side's page, or the free one where it belongs. */
static struct page *find_page(const struct side_book *book, const struct side *side,
	const struct masonry *masonry)
{
	size_t at = (size_t)hash_of(side, masonry);

	for (;; at++) {
		struct page *page = &book->pages[at & (book->capacity - 1)];

		if (!page->is_used || page_is_of(page, side, masonry))
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
			*find_page(book, &old.pages[i].side, &old.pages[i].masonry) = old.pages[i];
}

struct side_book *side_book_new(struct arena *arena)
{
	struct side_book *book = arena_new(arena, 1, sizeof *book);

	book->arena = arena;
	set_capacity(book, PAGES_AT_FIRST);
	return book;
}

/* False where a run is too short. The pieces are in the arena. */
static bool lay_page(struct page *page, struct arena *arena)
{
	const struct masonry *masonry = &page->masonry;
	struct bond_run odd = side_run(&page->side, masonry->depth, false);
	struct bond_run even = side_run(&page->side, masonry->depth, true);
	struct bond_rule rule = { .block = masonry->length, .shortest = masonry->shortest,
		.odd_courses = (masonry->courses + 1) / 2, .even_courses = masonry->courses / 2 };

	return bond_lay(&page->bond, arena, &odd, masonry->courses > 1 ? &even : NULL, &rule);
}

static struct page *page_of(struct side_book *book, const struct side *side,
	const struct masonry *masonry)
{
	struct page *page = find_page(book, side, masonry);
	struct arena unused = ARENA_EMPTY;

	if (page->is_used)
		return page;
	if (2 * book->count >= book->capacity) {
		set_capacity(book, 2 * book->capacity);
		page = find_page(book, side, masonry);
	}
	*page = (struct page){ .side = *side, .masonry = *masonry, .is_used = true };
	book->count++;
	page->has_bond = lay_page(page, &unused);
	page->bond.odd.pieces = page->bond.even.pieces = NULL;
	arena_clear(&unused);
	return page;
}

const struct bond *side_bond(struct side_book *book, const struct side *side,
	const struct masonry *masonry)
{
	const struct page *page = page_of(book, side, masonry);

	return page->has_bond ? &page->bond : NULL;
}

const struct bond *side_lay(struct side_book *book, const struct side *side,
	const struct masonry *masonry)
{
	struct page *page = page_of(book, side, masonry);

	if (!page->is_laid)
		page->is_laid = lay_page(page, book->arena);
	assert(page->is_laid);
	return &page->bond;
}
