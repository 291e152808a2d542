#include "takeoff/advice/propose.h"
#include "base/stop.h"
#include "takeoff/advice/joining.h"

static void try_one(struct attempts *attempts, struct proposal proposal)
{
	if (attempt(attempts, &proposal))
		attempts_keep(attempts, &proposal);
}

/* ---- Of a letter ----------------------------------------------------------------------------- */

/* The letter's entry in force where it has raised beds; else NULL. */
static const struct entry *raised_entry(const struct area_row *area)
{
	const struct entry *entry = area->cells > 0 ? area->entry : NULL;

	return entry && entry->class == CLASS_BED &&
		block_number(&entry->block, BED_BUILD) == BUILD_RAISED ? entry : NULL;
}

void propose_courses(struct attempts *attempts)
{
	const struct areas *areas = &attempts->takeoff->areas;

	for (int i = 0; i < areas->count && !stop_asked(); i++) {
		const struct entry *entry = raised_entry(&areas->list[i]);
		int courses = entry ? (int)block_number(&entry->block, BED_COURSES) : 0;

		if (courses > 1)
			try_one(attempts, (struct proposal){ .kind = PROPOSE_COURSES,
				.letter = entry->letter, .courses = courses - 1 });
	}
}

/* One block of the book for one letter. */
static void propose_block(struct attempts *attempts, const struct entry *entry, struct size block)
{
	const struct size *now = &block_effective(&entry->block, BED_BLOCK)->as.size;
	nm height = wall_height(&entry->block);
	int64_t courses = height / block.up;

	if (!size_equal(&block, now) && height % block.up == 0 &&
		courses <= attribute_row(BED_COURSES)->rule.most)
		try_one(attempts, (struct proposal){ .kind = PROPOSE_BLOCK,
			.letter = entry->letter, .courses = (int)courses, .block = block });
}

void propose_blocks(struct attempts *attempts)
{
	const struct areas *areas = &attempts->takeoff->areas;
	const struct book *book = attempts->takeoff->book;

	for (int i = 0; book && i < areas->count; i++) {
		const struct entry *entry = raised_entry(&areas->list[i]);

		for (int j = 0; entry && j < book->goods_count && !stop_asked(); j++)
			if (book->goods[j].good == GOOD_BLOCK_WALL)
				propose_block(attempts, entry, book->goods[j].block);
	}
}

/* ---- Beds wall to wall ----------------------------------------------------------------------- */

static char letter_of(const struct attempts *attempts, int region)
{
	return attempts->takeoff->survey.regions[region].entry->letter;
}

/* The bed of the proposal's letter first: it may be the later one of an image. */
static void add_pair(const struct attempts *attempts, struct proposal *proposal,
	const struct joining *pair)
{
	bool is_first = letter_of(attempts, pair->region) == proposal->letter;
	int other = is_first ? pair->other : pair->region;

	proposal->at[proposal->region_count / 2] =
		attempts->takeoff->survey.regions[other].first_cell;
	proposal->regions[proposal->region_count++] = is_first ? pair->region : pair->other;
	proposal->regions[proposal->region_count++] = other;
}

static bool have_same_letters(const struct attempts *attempts, const struct joining *a,
	const struct joining *b)
{
	char first = letter_of(attempts, a->region), second = letter_of(attempts, a->other);
	char one = letter_of(attempts, b->region), other = letter_of(attempts, b->other);

	return (one == first && other == second) || (one == second && other == first);
}

/* Whether the box of a pair is the image of another's. */
static bool is_image(const struct attempts *attempts, const struct joining *a,
	const struct joining *b)
{
	const struct mirror mirror = mirror_of(attempts->plot);
	struct rectangle images[IMAGES_MOST];
	int count = mirror_rectangles(&mirror, a->box, images);
	bool is = false;

	for (int i = 0; i < count; i++)
		is = is || (images[i].left == b->box.left && images[i].top == b->box.top &&
			images[i].right == b->box.right && images[i].bottom == b->box.bottom);
	return is;
}

/* Adds the pairs that are images of the first; they are not tried by themselves. */
static void add_images(const struct attempts *attempts, struct proposal *proposal,
	const struct joining *pairs, bool is_done[], int count)
{
	for (int i = 1; i < count; i++) {
		if (is_done[i] || proposal->region_count == 2 * IMAGES_MOST ||
			!have_same_letters(attempts, &pairs[0], &pairs[i]) ||
			!is_image(attempts, &pairs[0], &pairs[i]))
			continue;
		add_pair(attempts, proposal, &pairs[i]);
		is_done[i] = true;
	}
}

void propose_joinings(struct attempts *attempts)
{
	struct joining pairs[JOININGS_MOST];
	bool is_done[JOININGS_MOST] = { false };
	int count = joinings_find(pairs, attempts->takeoff);

	for (int i = 0; i < count && !stop_asked(); i++) {
		struct proposal proposal = { .kind = PROPOSE_JOINED,
			.letter = letter_of(attempts, pairs[i].region) };

		if (is_done[i])
			continue;
		add_pair(attempts, &proposal, &pairs[i]);
		add_images(attempts, &proposal, &pairs[i], &is_done[i], count - i);
		try_one(attempts, proposal);
	}
}
