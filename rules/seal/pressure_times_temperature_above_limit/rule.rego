# METADATA
# title: Pressure times temperature is too much for the gasket
# description: |
#   The highest pressure and the highest temperature of a gasket never apply together. For some kinds
#   the product of the two, in bar and degrees Celsius, has a limit of its own. A gasket that a
#   document rates by itself goes by that document. With the figures read so far the product is
#   reached only past one of the two limits alone; a stricter row of the site makes it bite.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: seals
#   scope: [pressure_times_temperature_stated]
#   needs: [seals.pressure_times_temperature_kpac, seals.pressure_times_temperature_limit_kpac]
#   message: "{seal} sees {have_kpac}; its kind bears {need_kpac}"
#   action: >-
#     Fit a gasket of a kind that bears pressure and temperature together, or get the maker's word
#     for this one.
#   basis:
#     - document: engineering reference page on flat gaskets
#       edition: "not stated"
#       clause: "limits by kind"
#       standing: restated
package rules.seal.pressure_times_temperature_above_limit

report contains {
	"subject": s.id,
	"seal": s.id,
	"have_kpac": s.pressure_times_temperature_kpac,
	"need_kpac": s.pressure_times_temperature_limit_kpac,
} if {
	some s in input.seals
	s.pressure_times_temperature_stated
	s.pressure_times_temperature_kpac > s.pressure_times_temperature_limit_kpac
}
