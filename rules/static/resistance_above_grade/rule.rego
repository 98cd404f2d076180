# METADATA
# title: A hose measures more resistance than its electrical grade allows
# description: |
#   A broken bonding wire or worn conductive rubber shows up in this measurement long before it shows on
#   the outside.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_flammable]
#   needs: [hoses.electrical_grade, hoses.resistance_ohm]
#   message: "{part} is grade {grade} but measures {have_ohm} from end to end; at most {need_ohm} is allowed"
#   action: "Take the hose out of use, repair or replace it, and measure it again."
#   basis:
#     - document: ISO 2928
#       edition: "2021"
#       clause: "electrical properties"
#       standing: published
#     - document: EN 12115
#       edition: ""
#       clause: "electrical grades"
#       standing: restated
package rules.static.resistance_above_grade

report contains {
	"subject": h.id,
	"part": h.id,
	"grade": h.electrical_grade,
	"have_ohm": h.resistance_ohm,
	"need_ohm": _most_ohm[h.electrical_grade],
} if {
	some h in input.hoses
	h.carries_flammable
	h.resistance_ohm > _most_ohm[h.electrical_grade]
}

# ISO 2928:2021 gives grades M and Ohm; EN 12115 keeps their limits for the grades through the wall.
_most_ohm := {"M": 100, "M/T": 100, "Ohm": 1000000, "Ohm/T": 1000000}
