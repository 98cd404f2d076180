# METADATA
# title: A liquid that holds charge runs through a hose whose wall does not conduct
# description: |
#   Such a liquid charges the inner wall of the hose. A grade that conducts through the wall (M/T or
#   Ohm/T) leads this charge away; grades M and Ohm only join the two ends.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: hoses
#   scope: [carries_flammable]
#   needs: [hoses.carries_accumulator, hoses.electrical_grade]
#   message: >-
#     {part} carries a flammable liquid that holds charge; grade {grade} promises no conduction through
#     the wall
#   action: >-
#     Prefer a hose of grade M/T or Ohm/T, or keep the flow slow and follow the site's rules for such
#     liquids.
#   basis:
#     - document: IEC TS 60079-32-1
#       edition: ""
#       clause: "7.7.3, hoses"
#       standing: recalled
#     - document: EN 12115
#       edition: ""
#       clause: "electrical grades"
#       standing: restated
package rules.static.accumulator_in_plain_hose

report contains {"subject": h.id, "part": h.id, "grade": h.electrical_grade} if {
	some h in input.hoses
	h.carries_flammable
	h.carries_accumulator == true
	h.electrical_grade in {"M", "Ohm"}
}
