#include "plot/edit/plants_lay.h"
#include "plot/edit/lay.h"

#include <stdlib.h>

bool class_takes_plant(enum plot_class class)
{
	return class == CLASS_BED || class == CLASS_LAWN || class == CLASS_OPEN;
}

/* ---- Specimens ------------------------------------------------------------------------------- */

static int64_t lift_kind(struct plant *plant, struct place at)
{
	size_t index = plant_specimen(plant, at);

	if (index == plant->specimen_count)
		return 0;
	plant_remove_specimen(plant, index);
	return 1;
}

static int64_t set_one(struct plants *plants, char letter, struct place at)
{
	int64_t changed = 0;

	for (size_t i = 0; i < plants->count; i++) {
		struct plant *plant = &plants->items[i];

		if (plant->letter != letter) {
			changed += lift_kind(plant, at);
		} else if (plant_specimen(plant, at) == plant->specimen_count) {
			plant_add_specimen(plant, at);
			changed++;
		}
	}
	return changed;
}

struct planted plants_set(struct plot *plot, char letter, struct place at)
{
	struct mirror mirror = mirror_of(plot);
	struct planted planted = { 0, false, false };
	struct place images[IMAGES_MOST];
	int count = mirror_cells(&mirror, at.x, at.y, images);

	for (int i = 0; i < count; i++) {
		struct place image = images[i];

		if (!ground_holds(&plot->ground, image.x, image.y))
			planted.outside = true;
		else if (!class_takes_plant(plot_class_of(plot,
			ground_cell(&plot->ground, image.x, image.y))))
			planted.is_barred = true;
		else
			planted.changed += set_one(&plot->details.plants, letter, image);
	}
	return planted;
}

int64_t plants_lift(struct plot *plot, struct place at)
{
	struct mirror mirror = mirror_of(plot);
	struct plants *plants = &plot->details.plants;
	struct place images[IMAGES_MOST];
	int count = mirror_cells(&mirror, at.x, at.y, images);
	int64_t lifted = 0;

	for (size_t i = 0; i < plants->count; i++) {
		struct plant *plant = &plants->items[i];

		if (plant_specimen(plant, at) == plant->specimen_count)
			continue;
		for (int j = 0; j < count; j++)
			lifted += lift_kind(plant, images[j]);
	}
	return lifted;
}

/* ---- Drifts ---------------------------------------------------------------------------------- */

static size_t find_drift(const struct plant *plant, struct drift drift)
{
	size_t i = 0;

	while (i < plant->drift_count && !drift_equal(&plant->drifts[i], &drift))
		i++;
	return i;
}

static bool are_joined(struct ground *ground, struct place one, struct place other)
{
	size_t count;
	struct rectangle *rows = lay_patch(ground, one, &count);
	bool is_in = false;

	for (size_t i = 0; i < count && !is_in; i++)
		is_in = rectangle_holds(rows[i], other);
	free(rows);
	return is_in;
}

/* Whether the bed at a cell has the band filled already, from whatever cell of it, or with all beds
 * of its letter. */
static bool is_filled(const struct plant *plant, struct ground *ground, struct place at,
	enum band band)
{
	char bed = ground_cell(ground, at.x, at.y);

	for (size_t i = 0; i < plant->drift_count; i++) {
		const struct drift *drift = &plant->drifts[i];

		if (drift->band == band && (drift->letter == bed ||
			(drift->letter == 0 && are_joined(ground, at, drift->at))))
			return true;
	}
	return false;
}

static int64_t fill_bed(struct plant *plant, struct ground *ground, struct place at, enum band band)
{
	if (is_filled(plant, ground, at, band))
		return 0;
	plant_add_drift(plant, (struct drift){ .at = at, .band = band });
	return 1;
}

/* The band of single beds is theirs no more. */
static int64_t fill_all(struct plant *plant, struct ground *ground, char bed, enum band band)
{
	const struct drift all = { .letter = bed, .band = band };

	if (find_drift(plant, all) < plant->drift_count)
		return 0;
	for (size_t i = plant->drift_count; i-- > 0;) {
		const struct drift *drift = &plant->drifts[i];

		if (drift->letter == 0 && drift->band == band &&
			ground_cell(ground, drift->at.x, drift->at.y) == bed)
			plant_remove_drift(plant, i);
	}
	plant_add_drift(plant, all);
	return 1;
}

struct planted plants_fill(struct plot *plot, char letter, struct place at, enum band band,
	bool is_all)
{
	struct plant *plant = plants_find(&plot->details.plants, letter);
	struct mirror mirror = mirror_of(plot);
	struct ground *ground = &plot->ground;
	struct planted planted = { 0, false, false };
	char bed = ground_cell(ground, at.x, at.y);
	struct place images[IMAGES_MOST];
	int count = is_all ? 0 : mirror_cells(&mirror, at.x, at.y, images);

	if (is_all)
		planted.changed += fill_all(plant, ground, bed, band);
	for (int i = 0; i < count; i++) {
		struct place image = images[i];

		if (!ground_holds(ground, image.x, image.y))
			planted.outside = true;
		else if (ground_cell(ground, image.x, image.y) != bed)
			planted.is_barred = true;
		else
			planted.changed += fill_bed(plant, ground, image, band);
	}
	return planted;
}

int64_t plants_empty(struct plot *plot, char letter, struct drift drift)
{
	struct plant *plant = plants_find(&plot->details.plants, letter);
	struct mirror mirror = mirror_of(plot);
	struct place images[IMAGES_MOST] = { drift.at };
	int count = drift.letter ? 1 : mirror_cells(&mirror, drift.at.x, drift.at.y, images);
	int64_t emptied = 0;

	for (int i = 0; i < count; i++) {
		size_t index;

		drift.at = images[i];
		index = find_drift(plant, drift);
		if (index == plant->drift_count)
			continue;
		plant_remove_drift(plant, index);
		emptied++;
	}
	return emptied;
}
