# METADATA
# title: All the gas let into the room leaves less oxygen than work in it needs
# description: |
#   Under 19.5 % US law calls a space oxygen deficient, and the first oxygen alarm is set there.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: releases
#   scope: [asphyxiant]
#   needs: [releases.oxygen_permille]
#   message: >-
#     If all gas of run {run} escapes into the room, {have_permille} oxygen is left; under {need_permille}
#     counts as deficient
#   action: >-
#     Fit an oxygen alarm or ventilation in the room, and close the supply when the line is not in use.
#   basis:
#     - document: 29 CFR 1910.146
#       edition: ""
#       clause: "(b), oxygen deficient atmosphere"
#       standing: restated
#     - document: UK university guidance on oxygen depletion
#       edition: ""
#       clause: "alarm levels"
#       standing: published
package rules.service.oxygen_low_in_room

report contains {"subject": r.id, "run": r.id, "have_permille": r.oxygen_permille, "need_permille": 195} if {
	some r in input.releases
	r.asphyxiant
	r.oxygen_permille < 195

	# Less is the matter of another rule.
	r.oxygen_permille >= 180
}
