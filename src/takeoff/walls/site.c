#include "takeoff/walls/site.h"
#include "base/stop.h"

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

static struct snag *add_snag(const struct site *site, enum snag_code code,
	const nm figures[static SNAG_FIGURES])
{
	return snag_add(site->job->basis->snags, code, site->room.region, figures);
}

static void put_at_side(struct snag *snag, const struct site *site, struct side_place place)
{
	snag_put_around(snag, room_side_cell(site->room.outline, place),
		room_side_cells(site->room.outline, place));
	snag->loop = place.loop;
	snag->side = place.side;
}

bool site_takes_wall(const struct site *site, const struct masonry *masonry)
{
	struct side_place jog = { 0, 0 };
	nm least = masonry->depth + masonry->shortest;
	struct place at;
	bool has_jog = false, has_room;

	for (; !stop_asked() && find_short_side(site, masonry, &jog); jog.side++) {
		has_jog = true;
		put_at_side(add_snag(site, SNAG_WALL_JOG,
			SNAG_FIGURES_OF(side_length(site, jog), least)), site, jog);
	}
	/* Facing corners are looked for only where no side is short. */
	has_room = has_jog ? room_is_wide(&site->room, room_width(masonry->depth, 0), &at) :
		room_for_walls(&site->room, masonry->depth, &at);
	if (!has_room)
		add_snag(site, SNAG_WALL_NARROW, SNAG_FIGURES_OF(masonry->depth))->cell = at;
	return has_room && !has_jog;
}

bool site_takes_cap(const struct site *site, const struct masonry *masonry)
{
	struct side_place jog = { 0, 0 };
	struct snag *snag;
	struct place at;
	bool has_jog = find_short_side(site, masonry, &jog);

	if (!has_jog && room_for_walls(&site->room, masonry->depth, &at))
		return true;
	snag = add_snag(site, SNAG_CAP_NARROW, SNAG_FIGURES_OF(masonry->depth));
	if (has_jog)
		put_at_side(snag, site, jog);
	else
		snag->cell = at;
	return false;
}

void site_check_ring(const struct site *site, const struct ring *ring,
	const struct masonry *masonry, bool is_cap)
{
	nm least = bond_corner(masonry->length, masonry->depth);

	for (int i = 0; i < ring->fault_count && !stop_asked(); i++) {
		const struct ring_fault *fault = &ring->faults[i];
		nm length = side_length(site, fault->place);

		if (fault->is_unbonded)
			put_at_side(add_snag(site, is_cap ? SNAG_CAP_BOND : SNAG_WALL_BOND,
				SNAG_FIGURES_OF(length)), site, fault->place);
		if (fault->corner > 0) {
			struct snag *snag = add_snag(site, SNAG_WALL_CORNER,
				SNAG_FIGURES_OF(length, fault->corner, least));
			snag->kind = is_cap ? WALL_CORNER_CAP : WALL_CORNER_WALL;
			put_at_side(snag, site, fault->place);
		}
	}
}

void site_check_inside(const struct site *site, nm depth)
{
	nm inside = site->job->inside;
	struct place at;

	if (!room_is_wide(&site->room, room_width(depth, inside), &at))
		add_snag(site, SNAG_BED_THIN, SNAG_FIGURES_OF(inside))->cell = at;
}
