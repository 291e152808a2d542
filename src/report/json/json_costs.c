#include "report/json/json_costs.h"

static cJSON *money_json(money amount)
{
	struct text text = TEXT_EMPTY;
	cJSON *value;

	text_add_decimal(&text, amount, 2);
	value = cJSON_CreateRaw(text.bytes);
	text_fini(&text);
	return value;
}

static void put_money(cJSON *object, const char *key, money amount)
{
	json_put(object, key, money_json(amount));
}

static void put_supplier(cJSON *object, const struct book *book, int supplier)
{
	if (supplier == NO_SUPPLIER)
		json_put(object, "supplier", cJSON_CreateNull());
	else
		json_put_text(object, "supplier", book->suppliers[supplier].name);
}

void json_put_price(cJSON *row, const struct takeoff *takeoff, const struct item *item)
{
	struct text pack = TEXT_EMPTY;

	if (item->weight > 0)
		json_put(row, "weight_kg", json_number(item->weight));
	if (!item->pack)
		return;
	text_print(&pack, "%s %s", pack_word(item->pack->kind), item->pack->words);
	json_put(row, "packs", json_number(item->packs));
	json_put_text(row, "pack", pack.bytes);
	json_put(row, "unit_price", money_json(item->pack->price));
	json_put(row, "cost", money_json(item->cost));
	put_supplier(row, takeoff->book, item->pack->supplier);
	text_fini(&pack);
}

static cJSON *sections(const struct takeoff *takeoff)
{
	cJSON *rows = cJSON_CreateArray();

	for (int day = 0; day < DAYS; day++) {
		struct cost_sum sum = costs_of_day(takeoff, day);
		cJSON *row;

		if (sum.goods == 0 && sum.delivery == 0)
			continue;
		row = cJSON_CreateObject();
		json_put_text(row, "section", section_word((enum section)day_section(day)));
		put_money(row, "goods", sum.goods);
		put_money(row, "delivery", sum.delivery);
		cJSON_AddItemToArray(rows, row);
	}
	return rows;
}

static cJSON *shipments(const struct takeoff *takeoff)
{
	cJSON *rows = cJSON_CreateArray();

	for (int i = 0; i < takeoff->costs.shipment_count; i++) {
		const struct shipment *shipment = &takeoff->costs.shipments[i];
		cJSON *row = cJSON_CreateObject();

		json_put_text(row, "section", section_word((enum section)day_section(shipment->day)));
		put_supplier(row, takeoff->book, shipment->supplier);
		json_put(row, "loads", json_count(shipment->drops));
		json_put(row, "weight_kg", json_number(shipment->weight));
		json_put(row, "weight_known", cJSON_CreateBool(shipment->is_weighed));
		put_money(row, "cost", shipment->cost);
		cJSON_AddItemToArray(rows, row);
	}
	return rows;
}

static cJSON *unpriced(const struct takeoff *takeoff)
{
	cJSON *rows = cJSON_CreateArray();

	for (int i = 0; i < takeoff->item_count; i++) {
		const struct item *item = &takeoff->items[i];
		cJSON *row;

		if (item->pack || item->order <= 0)
			continue;
		row = cJSON_CreateObject();
		json_put_text(row, "id", item->id);
		json_put_text(row, "name", item->label);
		if (!size_is_none(&item->block))
			json_put(row, "block_m", json_size(&item->block));
		cJSON_AddItemToArray(rows, row);
	}
	return rows;
}

void json_costs(struct text *out, const struct takeoff *takeoff)
{
	const struct costs *costs = &takeoff->costs;
	cJSON *object;

	text_add(out, ",\n  \"costs\": ");
	if (!takeoff->book) {
		text_add(out, "null");
		return;
	}
	object = cJSON_CreateObject();
	json_put_text(object, "currency", takeoff->book->currency);
	json_put(object, "complete", cJSON_CreateBool(takeoff->complete && costs->unpriced == 0));
	put_money(object, "goods", costs->goods);
	put_money(object, "delivery", costs->delivery);
	put_money(object, "total", costs->total);
	json_put(object, "sections", sections(takeoff));
	json_put(object, "shipments", shipments(takeoff));
	json_put(object, "unpriced", unpriced(takeoff));
	json_print(out, object);
}
