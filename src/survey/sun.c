#include "survey/sun.h"

#include <math.h>

#define RADIANS (3.14159265358979323846 / 180)

static const double JULIAN_2000 = 2451545, CENTURY_DAYS = 36525, HOUR_DEGREES = 15;

static double sine(double degrees)
{
	return sin(degrees * RADIANS);
}

static double cosine(double degrees)
{
	return cos(degrees * RADIANS);
}

static double held_to_one(double value)
{
	return fmax(-1, fmin(1, value));
}

/* t, here and below: centuries since noon of 2000-01-01. */
static double obliquity(double t, double node)
{
	double seconds = 21.448 - t * (46.815 + t * (0.00059 - t * 0.001813));

	return 23 + (26 + seconds / 60) / 60 + 0.00256 * cosine(node);
}

static double center(double t, double anomaly)
{
	return sine(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t)) +
		sine(2 * anomaly) * (0.019993 - 0.000101 * t) + sine(3 * anomaly) * 0.000289;
}

struct sun sun_at(double julian)
{
	double t = (julian - JULIAN_2000) / CENTURY_DAYS;
	double longitude = fmod(280.46646 + t * (36000.76983 + t * 0.0003032), 360);
	double anomaly = fmod(357.52911 + t * (35999.05029 - t * 0.0001537), 360);
	double eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
	double node = fmod(125.04 - 1934.136 * t, 360);
	double apparent = longitude + center(t, anomaly) - 0.00569 - 0.00478 * sine(node);
	double tilt = obliquity(t, node), y = pow(tan(tilt / 2 * RADIANS), 2);
	double equation = y * sine(2 * longitude) - 2 * eccentricity * sine(anomaly) +
		4 * eccentricity * y * sine(anomaly) * cosine(2 * longitude) -
		y * y / 2 * sine(4 * longitude) -
		5 * eccentricity * eccentricity / 4 * sine(2 * anomaly);

	return (struct sun){ asin(held_to_one(sine(tilt) * sine(apparent))) / RADIANS,
		equation / RADIANS * 4 };
}

/* ---- A day ----------------------------------------------------------------------------------- */

struct sun_day sun_day_of(double latitude, struct date date)
{
	return (struct sun_day){ latitude, date_julian(date) };
}

static double declination_at(const struct sun_day *day, double hour)
{
	return sun_at(day->noon + (hour - 12) / 24).declination;
}

struct sun_place sun_place(const struct sun_day *day, double hour)
{
	double declination = declination_at(day, hour), turn = (hour - 12) * HOUR_DEGREES;
	double up = sine(day->latitude) * sine(declination) +
		cosine(day->latitude) * cosine(declination) * cosine(turn);
	double west = cosine(declination) * sine(turn);
	double south = sine(day->latitude) * cosine(declination) * cosine(turn) -
		cosine(day->latitude) * sine(declination);
	double azimuth = 180 + atan2(west, south) / RADIANS;

	return (struct sun_place){ asin(held_to_one(up)) / RADIANS,
		azimuth >= 360 ? azimuth - 360 : azimuth };
}

/* Hours before or after noon at which the sun, were its declination as at an hour, would be at a
 * height: 0 where it is below it all day, 12 where it is above. */
static double half_day(const struct sun_day *day, double height, double hour)
{
	double declination = declination_at(day, hour);
	double cosine_turn = (sine(height) - sine(day->latitude) * sine(declination)) /
		(cosine(day->latitude) * cosine(declination));

	return acos(held_to_one(cosine_turn)) / RADIANS / HOUR_DEGREES;
}

/* side -1: when it rises; 1: when it sets. The declination changes so little that each round is
 * nearer by a factor of a hundred and more, but where the sun only grazes the height. */
static double crossing(const struct sun_day *day, double height, int side)
{
	double half = half_day(day, height, 12);

	for (int i = 0; i < 8; i++)
		half = half_day(day, height, 12 + side * half);
	return 12 + side * half;
}

struct sun_times sun_times(const struct sun_day *day, double height)
{
	return (struct sun_times){ crossing(day, height, -1), crossing(day, height, 1) };
}

double sun_dial_angle(double latitude, double hour)
{
	double turn = (hour - 12) * HOUR_DEGREES;

	return atan2(sine(fabs(latitude)) * sine(turn), cosine(turn)) / RADIANS;
}
