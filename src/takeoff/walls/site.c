#include "takeoff/walls/site.h"

static const char *shown(const struct site *site, nm length)
{
	return snag_length(site->job->arena, site->job->plot, length);
}

static nm side_length(const struct site *site, struct side_place place)
{
	return outline_side(&site->room.outline->loops[place.loop], place.side) *
		site->room.survey->cell;
}

static bool find_short_side(const struct site *site, const struct masonry *masonry,
	struct side_place *place)
{
	return room_short_side(site->room.outline, site->room.survey->cell,
		masonry->depth + masonry->shortest, place);
}

static void add_at_cell(const struct site *site, enum snag_code code, struct place at,
	const char *text)
{
	const struct job *job = site->job;

	snag_add(job->snags, code, job->takeoff, site->room.region, text)->cell = at;
}

static void add_at_side(const struct site *site, enum snag_code code, struct side_place place,
	const char *text)
{
	const struct job *job = site->job;
	struct snag *snag = snag_add(job->snags, code, job->takeoff, site->room.region, text);

	snag->cell = room_side_cell(site->room.outline, place);
	snag->loop = place.loop;
	snag->side = place.side;
}

/* Short sides are often many and alike: neighbours share a sentence. */
static void add_jogs(const struct site *site, const struct masonry *masonry,
	struct side_place place)
{
	const char *text = NULL;
	nm said = 0;

	for (; find_short_side(site, masonry, &place); place.side++) {
		nm length = side_length(site, place);

		if (length != said)
			text = arena_print(site->job->arena, "A side of %s is too short for the "
				"wall: it takes %s, the block's depth and the shortest piece.",
				shown(site, length),
				shown(site, masonry->depth + masonry->shortest));
		said = length;
		add_at_side(site, SNAG_WALL_JOG, place, text);
	}
}

bool site_takes_wall(const struct site *site, const struct masonry *masonry)
{
	struct side_place jog = { 0, 0 };
	struct place at;
	bool has_jog = find_short_side(site, masonry, &jog);
	bool has_room;

	if (has_jog)
		add_jogs(site, masonry, jog);
	/* Corners that face each other are looked for only where no side is short. */
	has_room = has_jog ? room_is_wide(&site->room, 2 * masonry->depth + 1, &at) :
		room_for_walls(&site->room, masonry->depth, &at);
	if (!has_room)
		add_at_cell(site, SNAG_WALL_NARROW, at, arena_print(site->job->arena,
			"Too narrow for a wall on either side, each %s deep, with ground between "
			"them.", shown(site, masonry->depth)));
	return has_room && !has_jog;
}

bool site_takes_cap(const struct site *site, const struct masonry *masonry)
{
	struct side_place jog = { 0, 0 };
	struct place at;
	bool has_jog = find_short_side(site, masonry, &jog);
	const char *text;

	if (!has_jog && room_for_walls(&site->room, masonry->depth, &at))
		return true;
	text = arena_print(site->job->arena,
		"The cap, %s deep, has no room along this bed: no cap is laid out.",
		shown(site, masonry->depth));
	if (has_jog)
		add_at_side(site, SNAG_CAP_NARROW, jog, text);
	else
		add_at_cell(site, SNAG_CAP_NARROW, at, text);
	return false;
}

void site_check_bond(const struct site *site, const struct ring *ring)
{
	for (int i = 0; i < ring->unbonded_count; i++) {
		struct side_place place = ring->unbonded[i];

		add_at_side(site, SNAG_WALL_BOND, place, arena_print(site->job->arena,
			"The courses of this side, %s long, do not bond: joints stand closer than "
			"a quarter block to those below.", shown(site, side_length(site, place))));
	}
}

void site_check_inside(const struct site *site, nm depth)
{
	nm inside = site->job->inside;
	struct place at;

	if (!room_is_wide(&site->room, 2 * depth + inside, &at))
		add_at_cell(site, SNAG_BED_THIN, at, arena_print(site->job->arena,
			"Less than %s of ground between the walls.", shown(site, inside)));
}
