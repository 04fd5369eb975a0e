## How well a figure is founded.

status-calibrated = calibrated
status-published = published
status-common-practice = common practice
status-from-memory = from memory
status-judgement = judgement
