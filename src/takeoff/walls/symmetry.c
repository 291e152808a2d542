#include "takeoff/walls/symmetry.h"

#define BIT(turn) (1U << (turn))

static const unsigned int kinds[SYMMETRIES_MOST] = {
	BIT(TURN_NONE) | BIT(TURN_LEFT_RIGHT) | BIT(TURN_TOP_BOTTOM) | BIT(TURN_HALF),
	BIT(TURN_NONE) | BIT(TURN_QUARTER) | BIT(TURN_HALF) | BIT(TURN_QUARTER_BACK),
	BIT(TURN_NONE) | BIT(TURN_LEFT_RIGHT),
	BIT(TURN_NONE) | BIT(TURN_TOP_BOTTOM),
	BIT(TURN_NONE) | BIT(TURN_HALF),
};

/* The own images among those turns. */
static struct symmetry chosen(struct arena *arena, const struct image own[TURNS],
	unsigned int turns)
{
	struct image *images = arena_new(arena, TURNS, sizeof *images);
	struct symmetry symmetry = { .images = images, .turns = turns };

	for (int turn = TURN_NONE + 1; turn < TURNS; turn++)
		if (turns & BIT(turn))
			images[symmetry.count++] = own[turn];
	return symmetry;
}

int symmetry_list(struct symmetry list[SYMMETRIES_MOST], struct arena *arena,
	const struct outline *outline)
{
	struct image own[TURNS];
	unsigned int turns = 0;
	int count = 0;

	for (int turn = TURN_NONE; turn <= TURN_QUARTER_BACK; turn++)
		if (image_find(&own[turn], arena, outline, outline, (enum turn)turn))
			turns |= BIT(turn);
	for (int i = 0; i < SYMMETRIES_MOST; i++)
		if ((turns & kinds[i]) == kinds[i])
			list[count++] = chosen(arena, own, kinds[i]);
	return count;
}

enum turn symmetry_first_turn(unsigned int turns, enum turn turn)
{
	enum turn first = turn;

	for (int own = TURN_NONE; own < TURNS; own++) {
		enum turn both = turn_then((enum turn)own, turn);

		if (turns & BIT(own) && both < first)
			first = both;
	}
	return first;
}
