/* Where the sun stands, by NOAA's full equations: National Oceanic and Atmospheric Administration,
 * Global Monitoring Laboratory, "General Solar Position Calculations", by its own account those of
 * Jean Meeus, Astronomical Algorithms, 2nd ed., 1998, chapters 25 and 28.
 *
 * Angles are degrees, azimuths clockwise from true north. Latitude: north positive. The height of
 * the sun is that of the middle of its disc, without refraction by the air. Hours are solar time:
 * 12 when the sun is on the meridian, whatever clocks say then. */
#ifndef SURVEY_SUN_H
#define SURVEY_SUN_H

#include "base/date.h"

/* Below this height the sun has set, as almanacs count: refraction of 34', half a disc of 16'. */
#define SUN_SET_HEIGHT (-0.833)

struct sun {
	double declination;
	double equation; /* of time, in minutes: solar time less mean time */
};
/* At a moment: a Julian day, of universal time. */
struct sun sun_at(double julian);

/* A day at a latitude, -90..90. Of where it is east or west nothing is asked: the sun is taken as
 * it stands over Greenwich, which sets its declination off by 0.2 at most. */
struct sun_day {
	double latitude;
	double noon; /* Julian day, of universal time, at which the sun is on the meridian */
};
struct sun_day sun_day_of(double latitude, struct date date);

struct sun_place {
	double height, azimuth; /* azimuth 0..360 */
};
struct sun_place sun_place(const struct sun_day *day, double hour);

/* From when to when it stands above a height, in hours, 0 to 24; both 12 where it never does, 0
 * and 24 where it always does. Within a second. */
struct sun_times {
	double rise, set;
};
struct sun_times sun_times(const struct sun_day *day, double height);

/* Of a level dial with a gnomon that points at the pole: how far its line for an hour is from that
 * for noon, -180..180, towards the afternoon positive: tan = sin latitude x tan of the hour angle,
 * 15 an hour. Towards the afternoon is clockwise seen from above in the north, the other way round
 * in the south. (Albert E. Waugh, Sundials: Their Theory and Construction, 1973, by memory.) */
double sun_dial_angle(double latitude, double hour);

#endif
