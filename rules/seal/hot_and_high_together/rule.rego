# METADATA
# title: A gasket is used near both of its limits and nothing limits the two together
# description: |
#   The highest pressure and the highest temperature of a gasket never apply together. Most kinds
#   have no published limit of the two together; past half of both it is a question for the maker.
#   Half is a screening figure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: seals
#   scope: ["!pressure_times_temperature_stated"]
#   needs: []
#   absent: [seals.pressure_share_permille, seals.temperature_share_permille]
#   message: >-
#     {seal} sees {pressure_permille} of the pressure and {temperature_permille} of the temperature
#     its kind bears
#   action: >-
#     Find the point in the maker's chart of pressure against temperature, enter the figure as rated
#     with that paper as evidence, or fit a kind with more room.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.seal.hot_and_high_together

report contains {
	"subject": s.id,
	"seal": s.id,
	"pressure_permille": s.pressure_share_permille,
	"temperature_permille": s.temperature_share_permille,
} if {
	some s in input.seals
	not s.pressure_times_temperature_stated
	s.pressure_share_permille > _half_permille
	s.temperature_share_permille > _half_permille
}

_half_permille := 500
