# METADATA
# title: All the gas let into the room leaves too little oxygen to breathe
# description: |
#   Without smell or warning a person faints when the oxygen falls. Two breaths of pure nitrogen are
#   enough, and helpers follow the first.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: releases
#   scope: [asphyxiant]
#   needs: [releases.oxygen_permille]
#   message: >-
#     If all gas of run {run} escapes into the room, {have_permille} oxygen is left; under {need_permille}
#     nobody may be there
#   action: "Put the gas supply outside, connect less gas, or ventilate; fit an oxygen alarm in any case."
#   basis:
#     - document: UK university guidance on oxygen depletion
#       edition: ""
#       clause: "alarm levels"
#       standing: published
#     - document: 29 CFR 1910.146
#       edition: ""
#       clause: "(b), oxygen deficient atmosphere"
#       standing: restated
package rules.service.oxygen_depletion_in_room

report contains {"subject": r.id, "run": r.id, "have_permille": r.oxygen_permille, "need_permille": 180} if {
	some r in input.releases
	r.asphyxiant
	r.oxygen_permille < 180
}
